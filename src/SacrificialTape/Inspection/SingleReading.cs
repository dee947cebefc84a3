using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>What a single reading tells: a loss and a mean rate, without scatter, confidence or limit.</summary>
/// <remarks>Age: more than 0, at most 1000 a. A reading beyond 1.5 times the thickest foil is refused.</remarks>
public sealed record SingleReading : IHasWorkings
{
    private readonly StoredNumber ageYears;

    /// <summary>Takes in the reading.</summary>
    /// <param name="foil">The foil as it was supplied.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="age">Time since the tape was laid.</param>
    /// <exception cref="ArgumentOutOfRangeException">The age is outside its range, or the reading is far thicker than the foil.</exception>
    public SingleReading(Foil foil, FoilReading reading, Duration age)
    {
        ArgumentNullException.ThrowIfNull(foil);
        ArgumentNullException.ThrowIfNull(reading);
        FoilReadings.CheckThickness(foil, reading.Um, nameof(reading));
        this.Foil = foil;
        this.Reading = reading;
        this.ageYears = new StoredNumber(ThicknessPoint.CheckAge(age));
    }

    /// <summary>The foil as it was supplied.</summary>
    public Foil Foil { get; }

    /// <summary>The reading.</summary>
    public FoilReading Reading { get; }

    /// <summary>Time since the tape was laid.</summary>
    public Duration Age => UnitConversions.FromYears(this.ageYears.Bare);

    /// <summary>Mean rate since the tape was laid, from the nominal foil; null when the reading is thicker.</summary>
    public CorrosionRate? Rate => this.RateUm(default(NoSteps)) is >= 0 and double rate ? CorrosionRate.FromMicrometersPerYear(rate) : null;

    /// <summary>That one reading has no scatter, and what else must be said of it.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        yield return rules[RuleIds.SingleReading].State(subject);
        double most = FoilReadings.MostUm(this.Foil);
        if (WithAllowance.Above(this.Reading.Um, most))
        {
            yield return rules[RuleIds.ReadingAboveFoil].State(
                subject, new Measure(this.Reading.Um, TradeUnit.Micrometer), new Measure(most, TradeUnit.Micrometer));
        }

        if (!this.Reading.Preparation.ProductsRemoved)
        {
            yield return rules[RuleIds.ReadingNotCleaned].State(subject);
        }

        if (!(this.RateUm(default(NoSteps)) > 0))
        {
            yield return rules[RuleIds.LifeUndetermined].State(subject);
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.RateUm(steps);
        return steps.Under("Rate of a single reading");
    }

    /// <summary>The reading and its age in a few words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Reading} after {this.ageYears.Bare:0.##} a");

    private double RateUm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        RemainingLifeKernel.LongTermUm(this.Foil.ThicknessMm * 1000, this.Reading.Um, this.ageYears.Bare, steps);
}
