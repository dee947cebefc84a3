using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>One point of a profile: where, at what potential, giving how much current.</summary>
/// <remarks>Current density: positive where metal is lost. <c>default</c> is unset and says so when read.</remarks>
public readonly record struct FilmPoint
{
    private readonly StoredNumber distanceMm;
    private readonly StoredNumber currentAmperesPerM2;
    private readonly ElectrodePotential potential;
    private readonly int segment;

    internal FilmPoint(int segment, double distanceMm, ElectrodePotential potential, double amperesPerM2)
    {
        this.segment = segment;
        this.distanceMm = new StoredNumber(distanceMm);
        this.potential = potential;
        this.currentAmperesPerM2 = new StoredNumber(amperesPerM2);
    }

    /// <summary>Which stretch it lies on, counted from 0; where two meet, each has its own point.</summary>
    public int Segment => this.distanceMm.IsSet ? this.segment : (int)this.distanceMm.Read(nameof(FilmPoint));

    /// <summary>Distance from the left end.</summary>
    public Length Distance => Length.FromMillimeters(this.distanceMm.Read(nameof(FilmPoint)));

    /// <summary>Potential there.</summary>
    public ElectrodePotential Potential => this.distanceMm.IsSet ? this.potential : throw new InvalidOperationException(
        "This FilmPoint is unset: it is a default value that no calculation has filled.");

    /// <summary>Current density there.</summary>
    public ElectricCurrentDensity CurrentDensity =>
        ElectricCurrentDensity.FromAmperesPerSquareMeter(this.currentAmperesPerM2.Read(nameof(FilmPoint)));

    /// <summary>The point as invariant text.</summary>
    public override string ToString() => this.distanceMm.IsSet
        ? $"{MeasureText.Write(this.distanceMm.Bare, TradeUnit.Millimeter, 6)}: {this.potential}, {MeasureText.Write(this.currentAmperesPerM2.Bare, TradeUnit.AmperePerSquareMeter, 6)}"
        : "unset";
}
