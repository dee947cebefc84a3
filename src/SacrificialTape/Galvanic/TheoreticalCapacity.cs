using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>All the charge that a kilogram of zinc holds, by Faraday's law: n F / M.</summary>
/// <remarks>
/// It goes with a calculation that counts zinc's own corrosion separately. There is one, <see cref="Zinc"/>, and it cannot
/// be made from a number: a <see cref="PracticalCapacity"/>, which already contains own corrosion, does not fit in its place.
/// </remarks>
public sealed record TheoreticalCapacity : IHasWorkings
{
    private readonly StoredNumber ampereHoursPerKilogram;

    private TheoreticalCapacity() => this.ampereHoursPerKilogram = new StoredNumber(Solve(default(NoSteps)));

    /// <summary>Zinc: 819.9 A.h/kg.</summary>
    public static TheoreticalCapacity Zinc { get; } = new();

    /// <summary>The capacity.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.Capacity))]
    public ElectrochemicalCapacity Capacity => ElectrochemicalCapacity.FromAmpereHoursPerKilogram(this.AmpereHoursPerKilogram);

    /// <summary>The zinc that goes for an ampere over a year.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.Consumption))]
    public AnodeConsumption Consumption => AnodeConsumption.FromKilogramsPerAmpereYear(
        GalvanicKernel.Consumption(this.AmpereHoursPerKilogram, default(NoSteps)));

    internal double AmpereHoursPerKilogram => this.ampereHoursPerKilogram.Bare;

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = GalvanicKernel.Consumption(Solve(steps), steps);
        return steps.Under("Theoretical capacity of zinc");
    }

    /// <summary>The capacity as invariant text.</summary>
    public override string ToString() => $"theoretical, {this.Capacity}";

    private static double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        GalvanicKernel.Capacity(GalvanicTables.ZincElectrons, GalvanicTables.FaradayCoulombPerMole, GalvanicTables.ZincGramPerMole, steps);
}
