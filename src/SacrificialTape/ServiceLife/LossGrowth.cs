using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>How loss grows with time, with what is uncertain of it. Loss is always in proportion to the first-year rate.</summary>
public sealed record LossGrowth
{
    private static readonly double[] Probed = [0.5, 1];

    private LossGrowth(string name, Basis basis, ILossLaw? law, UncertainExponent? exponent, AfterTwentyYears after)
    {
        this.Name = name;
        this.Basis = basis;
        this.Law = law;
        this.Exponent = exponent;
        this.After = after;
    }

    /// <summary>Every year takes as much as the first.</summary>
    public static LossGrowth Linear { get; } = new("linear", LossFormulas.Linear, LinearLoss.Law, null, AfterTwentyYears.Tangent);

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>On what it rests.</summary>
    public Basis Basis { get; }

    /// <summary>The law, where nothing of its growth is uncertain.</summary>
    public ILossLaw? Law { get; }

    /// <summary>The exponent of a power law.</summary>
    public UncertainExponent? Exponent { get; }

    /// <summary>How a power law goes on beyond 20 years.</summary>
    public AfterTwentyYears After { get; }

    /// <summary>Whether time is a power of loss all along, so that a log-normal rate makes a log-normal life.</summary>
    internal bool IsPurePower => this.Law is LinearLoss || (this.Exponent is not null && this.After == AfterTwentyYears.Power);

    /// <summary>A power law whose exponent has an error.</summary>
    /// <param name="exponent">The exponent.</param>
    /// <param name="after">How it goes on beyond 20 years.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such way to go on.</exception>
    public static LossGrowth PowerLaw(UncertainExponent exponent, AfterTwentyYears after)
    {
        ArgumentNullException.ThrowIfNull(exponent);
        return Enum.IsDefined(after)
            ? new(after == AfterTwentyYears.Tangent ? "power law, tangent after 20 a" : "power law all along", exponent.Basis, null, exponent, after)
            : throw new ArgumentOutOfRangeException(nameof(after), after, "A power law goes on along its tangent or along the power.");
    }

    /// <summary>Any law without an error of its own: piecewise, measured, or the host's.</summary>
    /// <param name="law">The law; its loss must be in proportion to the first-year rate.</param>
    /// <exception cref="ArgumentException">The loss is not in proportion to the rate.</exception>
    public static LossGrowth Under(ILossLaw law)
    {
        ArgumentNullException.ThrowIfNull(law);
        foreach (double years in Probed)
        {
            var time = UnitConversions.FromYears(years);
            double one = UnitConversions.Micrometers(law.Loss(CorrosionRate.FromMicrometersPerYear(1), time));
            double two = UnitConversions.Micrometers(law.Loss(CorrosionRate.FromMicrometersPerYear(2), time));
            if (!WithAllowance.AtMost(two, 2 * one) || !WithAllowance.AtLeast(two, 2 * one))
            {
                throw new ArgumentException($"The loss under '{law.Name}' is not in proportion to the first-year rate.", nameof(law));
            }
        }

        return law is LinearLoss ? Linear : new(law.Name, law.Basis, law, null, AfterTwentyYears.Tangent);
    }

    /// <summary>ln of the loss after a time at 1 um/a.</summary>
    internal double LogLoss(double years, in PowerLawTerms terms)
    {
        if (this.Exponent is null)
        {
            return Math.Log(this.Law is LinearLoss
                ? years
                : UnitConversions.Micrometers(this.Law!.Loss(CorrosionRate.FromMicrometersPerYear(1), UnitConversions.FromYears(years))));
        }

        return years > PowerLawTerms.KneeYears && this.After == AfterTwentyYears.Tangent
            ? Math.Log(terms.AtKnee + (terms.SlopeAfter * (years - PowerLawTerms.KneeYears)))
            : terms.Exponent * Math.Log(years);
    }

    /// <summary>Whether <see cref="LogSlope"/> is known in closed form.</summary>
    internal bool HasSlope => this.Exponent is not null || this.Law is LinearLoss;

    /// <summary>Slope of ln of the loss against ln of the time, of the linear law and of power laws.</summary>
    internal double LogSlope(double years, in PowerLawTerms terms)
    {
        if (this.Exponent is null)
        {
            return 1;
        }

        double past = years - PowerLawTerms.KneeYears;
        return past > 0 && this.After == AfterTwentyYears.Tangent
            ? terms.SlopeAfter * years / (terms.AtKnee + (terms.SlopeAfter * past))
            : terms.Exponent;
    }

    /// <summary>Time to a loss of so many first years.</summary>
    internal double Years(double ratio, in PowerLawTerms terms)
    {
        if (this.Exponent is null)
        {
            return this.Law is LinearLoss
                ? ratio
                : this.Law!.TimeToLoss(CorrosionRate.FromMicrometersPerYear(1), Length.FromMicrometers(ratio)).Years;
        }

        return this.After == AfterTwentyYears.Tangent
            ? LossKernel.PowerYears(ratio, 1, terms, default(NoSteps))
            : Math.Pow(ratio, terms.Inverse);
    }
}
