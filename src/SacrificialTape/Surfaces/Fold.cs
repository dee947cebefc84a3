using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A line along which a strip is folded over an arris, bent round a corner or pressed into a fillet.</summary>
/// <remarks>
/// What owns it says from where the position counts: along the outline of a section, across a strip, or along it. A
/// sharp fold has no radius and no run.
/// </remarks>
public sealed record Fold
{
    private readonly StoredNumber positionMm;
    private readonly StoredNumber runMm;
    private readonly StoredNumber turnDegrees;
    private readonly StoredNumber radiusMm;

    internal Fold(double positionMm, double runMm, double turnDegrees, double radiusMm, bool isConvex)
    {
        this.positionMm = new StoredNumber(positionMm);
        this.runMm = new StoredNumber(runMm);
        this.turnDegrees = new StoredNumber(turnDegrees);
        this.radiusMm = new StoredNumber(radiusMm);
        this.IsConvex = isConvex;
    }

    /// <summary>Where the fold begins.</summary>
    public Length Position => Length.FromMillimeters(this.PositionMm);

    /// <summary>How far it goes on from there, along the steel; zero for a sharp fold.</summary>
    public Length Run => Length.FromMillimeters(this.RunMm);

    /// <summary>By how much the steel turns.</summary>
    public Angle Turn => Angle.FromDegrees(this.TurnDegrees);

    /// <summary>Radius of the steel there; zero where it is sharp.</summary>
    public Length Radius => Length.FromMillimeters(this.RadiusMm);

    /// <summary>True over an arris or round a corner, false into a fillet.</summary>
    public bool IsConvex { get; }

    internal double PositionMm => this.positionMm.Bare;

    internal double RunMm => this.runMm.Bare;

    internal double TurnDegrees => this.turnDegrees.Bare;

    internal double RadiusMm => this.radiusMm.Bare;

    /// <summary>Place, turn and radius in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.PositionMm:0.0}{(this.RunMm > 0 ? string.Create(CultureInfo.InvariantCulture, $" to {this.PositionMm + this.RunMm:0.0}") : string.Empty)} mm: {this.TurnDegrees:0.#} deg {(this.IsConvex ? "over" : "into")} {(this.RadiusMm > 0 ? string.Create(CultureInfo.InvariantCulture, $"radius {this.RadiusMm:0.##} mm") : this.IsConvex ? "an arris" : "a corner")}");

    /// <summary>The same fold, its place counted from somewhere else.</summary>
    internal Fold At(double positionMm) => new(positionMm, this.RunMm, this.TurnDegrees, this.RadiusMm, this.IsConvex);
}
