using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>The greatest loss to expect on the whole area, from the greatest loss found on each of some equal sample areas.</summary>
/// <remarks>
/// <para>3 to 10 000 losses, zero or more and not all equal, each the greatest of one sample area; whole area at least that of all
/// samples, at most 1 000 000 times a sample.</para>
/// <para>Gumbel's distribution, with the return period T = whole area over sample area. It is carried far beyond what was
/// looked at: <see cref="Judge"/> warns of small samples and long return periods. Unbiased linear estimates (MVLUE) need
/// tables of coefficients and are not here.</para>
/// </remarks>
public sealed record LargestLosses : IHasWorkings
{
    private const double MostPeriod = 1e6;

    private readonly StoredNumber sampleM2;
    private readonly StoredNumber wholeM2;
    private readonly StoredNumber location;
    private readonly StoredNumber scale;

    /// <summary>Fits the distribution.</summary>
    /// <param name="losses">The greatest loss of each sample area.</param>
    /// <param name="sampleArea">Area of one sample.</param>
    /// <param name="wholeArea">Area of the whole.</param>
    /// <param name="method">How it is fitted.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or all losses are equal.</exception>
    public LargestLosses(IEnumerable<Length> losses, Area sampleArea, Area wholeArea, GumbelMethod method)
    {
        ValueList<Length> allLosses = losses.Listed();
        if (!Enum.IsDefined(method))
        {
            throw new ArgumentOutOfRangeException(nameof(method), method, "Moments or MaximumLikelihood.");
        }

        AcceptedRange.Between(3, ToleranceFactor.MostReadings, "losses").Check(allLosses.Count, nameof(losses));
        foreach (Length loss in allLosses)
        {
            AcceptedRange.AtLeast(0, "um").Check(UnitConversions.Micrometers(loss), nameof(losses));
        }

        double sample = AcceptedRange.Above(0, "m2").Check(UnitConversions.SquareMeters(sampleArea), nameof(sampleArea));
        double whole = AcceptedRange.Between(allLosses.Count * sample * (1 - WithAllowance.RelativeAllowance), MostPeriod * sample, "m2")
            .Noting("at least all samples together").Check(UnitConversions.SquareMeters(wholeArea), nameof(wholeArea));
        this.Losses = allLosses;
        this.Method = method;
        this.sampleM2 = new StoredNumber(sample);
        this.wholeM2 = new StoredNumber(whole);
        double[] um = this.AllUm();
        double least = um.Min();
        AcceptedRange.Above(least * (1 + WithAllowance.RelativeAllowance), "um").Noting("the least: losses that are all equal have no scatter to fit")
            .Check(um.Max(), nameof(losses));
        (double l, double a) = this.Fit(default(NoSteps));
        this.location = new StoredNumber(l);
        this.scale = new StoredNumber(a);
    }

    /// <summary>The greatest loss of each sample area.</summary>
    public ValueList<Length> Losses { get; }

    /// <summary>How the distribution is fitted.</summary>
    public GumbelMethod Method { get; }

    /// <summary>Area of one sample.</summary>
    public Area SampleArea => Area.FromSquareMeters(this.sampleM2.Bare);

    /// <summary>Area of the whole.</summary>
    public Area WholeArea => Area.FromSquareMeters(this.wholeM2.Bare);

    /// <summary>Location of the distribution: the likeliest greatest loss of one sample area.</summary>
    public Length Location => Length.FromMicrometers(this.location.Bare);

    /// <summary>Scale of the distribution.</summary>
    public Length Scale => Length.FromMicrometers(this.scale.Bare);

    /// <summary>How many sample areas make the whole.</summary>
    public double ReturnPeriod => GumbelKernel.ReturnPeriod(this.wholeM2.Bare, this.sampleM2.Bare, default(NoSteps));

    /// <summary>The loss that one sample area in <see cref="ReturnPeriod"/> exceeds: the greatest loss to expect.</summary>
    public Length LargestLoss => Length.FromMicrometers(
        GumbelKernel.Greatest(this.location.Bare, this.scale.Bare, this.ReturnPeriod, default(NoSteps)));

    /// <summary>The same by the shortcut with ln T, a little greater: the form in which it is often printed.</summary>
    public Length LargestLossByLogarithm => Length.FromMicrometers(
        GumbelKernel.GreatestByLogarithm(this.location.Bare, this.scale.Bare, this.ReturnPeriod, default(NoSteps)));

    private double SampledPercent => 100 * GumbelKernel.SampledShare(this.Losses.Count, this.wholeM2.Bare, this.sampleM2.Bare);

    /// <summary>The loss that the whole area does not exceed with a probability, if location and scale were known exactly.</summary>
    /// <param name="probability">0.01 to 0.9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its range.</exception>
    public Length NotExceededWith(Probability probability) => Length.FromMicrometers(GumbelKernel.NotExceeded(
        this.location.Bare,
        this.scale.Bare,
        this.ReturnPeriod,
        AcceptedRange.Between(0.01, 0.9999, string.Empty).Check(probability.Fraction, nameof(probability)),
        default(NoSteps)));

    /// <summary>Whether the samples bear what is made of them.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleIds.ExtremeSampleShare].Judge(new Measure(this.SampledPercent, TradeUnit.Percent), subject) is { } small)
        {
            yield return small;
        }

        if (rules[RuleIds.ExtremeReturnPeriod].Judge(new Measure(this.ReturnPeriod, TradeUnit.One), subject) is { } far)
        {
            yield return far;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        (double l, double a) = this.Fit(steps);
        double period = GumbelKernel.ReturnPeriod(this.wholeM2.Bare, this.sampleM2.Bare, steps);
        _ = GumbelKernel.Greatest(l, a, period, steps);
        _ = GumbelKernel.GreatestByLogarithm(l, a, period, steps);
        _ = GumbelKernel.NotExceeded(l, a, period, 0.95, steps);
        return steps.Under("Greatest loss on the whole area");
    }

    /// <summary>Fit and greatest loss in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Losses.Count} samples, location {this.location.Bare:0.00} um, scale {this.scale.Bare:0.00} um; greatest of {this.ReturnPeriod:0.##} such areas {UnitConversions.Micrometers(this.LargestLoss):0.00} um");

    private double[] AllUm() => [.. this.Losses.Select(UnitConversions.Micrometers)];

    private (double Location, double Scale) Fit<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double[] um = this.AllUm();
        if (this.Method == GumbelMethod.MaximumLikelihood)
        {
            return GumbelKernel.ByLikelihood(um, steps);
        }

        double mean = ReadingKernel.MeanUm(um, steps);
        return GumbelKernel.ByMoments(mean, ReadingKernel.DeviationUm(um, mean, steps), steps);
    }
}
