using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>A length of strip as the way of the current to a window at its end.</summary>
/// <remarks>Length: more than 0, at most 1000 km. Width: more than 0, at most 10 m.</remarks>
public sealed record StripPath : IHasWorkings
{
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber widthMm;

    /// <summary>Describes a way.</summary>
    /// <param name="sheet">The foil.</param>
    /// <param name="length">How far to the window along the strip.</param>
    /// <param name="width">Width of the strip.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public StripPath(FoilSheet sheet, Length length, Length width)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        this.Sheet = sheet;
        this.lengthMm = new StoredNumber(AcceptedRange.AboveUpTo(0, 1e9, "mm").Check(UnitConversions.Millimeters(length), nameof(length)));
        this.widthMm = new StoredNumber(AcceptedRange.AboveUpTo(0, 10_000, "mm").Check(UnitConversions.Millimeters(width), nameof(width)));
    }

    /// <summary>The foil.</summary>
    public FoilSheet Sheet { get; }

    /// <summary>How far to the window.</summary>
    public Length Length => Length.FromMillimeters(this.LengthMm);

    /// <summary>Width of the strip.</summary>
    public Length Width => Length.FromMillimeters(this.WidthMm);

    /// <summary>Resistance from end to end.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Strip))]
    public ElectricResistance Resistance => ElectricResistance.FromOhms(this.Ohm(default(NoSteps)));

    internal double LengthMm => this.lengthMm.Bare;

    internal double WidthMm => this.widthMm.Bare;

    /// <summary>Voltage lost along it when current is collected evenly all along.</summary>
    /// <param name="demand">Current for each covered area; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative.</exception>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Distributed))]
    public ElectricPotential DropOf(ElectricCurrentDensity demand) => ElectricPotential.FromVolts(VoltageKernel.DistributedV(
        AcceptedRange.AtLeast(0, "A/m2").Check(UnitConversions.AmperesPerSquareMeter(demand), nameof(demand)),
        this.Sheet.SquareOhm(default(NoSteps)),
        this.LengthMm,
        default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Ohm(steps);
        return steps.Under("Resistance of a strip");
    }

    /// <summary>Length and width in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"strip {this.LengthMm:0.###} x {this.WidthMm:0.###} mm, {this.Sheet}");

    internal double Ohm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => VoltageKernel.StripOhm(this.Sheet.SquareOhm(steps), this.LengthMm, this.WidthMm, steps);
}
