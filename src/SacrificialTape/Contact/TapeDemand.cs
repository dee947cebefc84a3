using System.Globalization;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>The current that tape sends to bare steel, for each area that it covers.</summary>
/// <remarks>
/// Bare steel served for each covered area: zero to 100. Tape feeds the steel that is bare beside it, in its holes and
/// scratches; a share of 1 means as much bare steel as tape, far more than there is on most surfaces: the safe side.
/// </remarks>
public sealed record TapeDemand : IHasWorkings
{
    /// <summary>Describes a demand.</summary>
    /// <param name="steel">What bare steel draws.</param>
    /// <param name="bareForEachCovered">Bare steel served for each covered area.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is over 100.</exception>
    public TapeDemand(CurrentDemand steel, AreaRatio bareForEachCovered)
    {
        ArgumentNullException.ThrowIfNull(steel);
        _ = AcceptedRange.Between(0, 100, string.Empty).Check(bareForEachCovered.Ratio, nameof(bareForEachCovered));
        this.Steel = steel;
        this.BareForEachCovered = bareForEachCovered;
    }

    /// <summary>What bare steel draws.</summary>
    public CurrentDemand Steel { get; }

    /// <summary>Bare steel served for each covered area.</summary>
    public AreaRatio BareForEachCovered { get; }

    /// <summary>The highest current for each covered area.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.CoveredDemand))]
    public ElectricCurrentDensity Covered => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.AmperesPerM2(default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.AmperesPerM2(steps);
        return steps.Under("Current for each covered area");
    }

    /// <summary>Demand and share in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Steel}, {this.BareForEachCovered.Ratio:G6} of bare steel for each covered area");

    internal double AmperesPerM2<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        VoltageKernel.CoveredDemand(this.Steel.HighestAmperesPerM2, this.BareForEachCovered.Ratio, steps);
}
