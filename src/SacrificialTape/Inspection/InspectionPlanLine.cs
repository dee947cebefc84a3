using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>What a plan must know of a line: its name, its area, and what lies under the tape.</summary>
/// <remarks>Area: more than 0, at most 1 000 000 m2.</remarks>
public sealed record InspectionPlanLine
{
    private readonly StoredNumber m2;

    /// <summary>Describes a line.</summary>
    /// <param name="tag">Its tag.</param>
    /// <param name="area">Area to be covered.</param>
    /// <param name="paintStays">Whether sound paint stays under the tape.</param>
    /// <param name="hasWelds">Whether strips go along welds first.</param>
    /// <param name="layers">Layers everywhere.</param>
    /// <exception cref="ArgumentException">The tag is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Area or layers are outside their range.</exception>
    public InspectionPlanLine(string tag, Area area, bool paintStays = false, bool hasWelds = false, int layers = 1)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(tag);
        this.Tag = tag;
        this.m2 = new StoredNumber(AcceptedRange.AboveUpTo(0, 1_000_000, "m2").Check(UnitConversions.SquareMeters(area), nameof(area)));
        this.PaintStays = paintStays;
        this.HasWelds = hasWelds;
        AcceptedRange.Between(0, 100, "layers").Check(layers);
        this.Layers = layers;
    }

    /// <summary>Its tag.</summary>
    public string Tag { get; }

    /// <summary>Area to be covered.</summary>
    public Area Area => Area.FromSquareMeters(this.m2.Bare);

    /// <summary>Whether sound paint stays under the tape.</summary>
    public bool PaintStays { get; }

    /// <summary>Whether strips go along welds first.</summary>
    public bool HasWelds { get; }

    /// <summary>Layers everywhere.</summary>
    public int Layers { get; }

    internal double AreaM2 => this.m2.Bare;

    /// <summary>A line from its lay: area and layers are the lay's.</summary>
    /// <param name="tag">Its tag.</param>
    /// <param name="lay">The lay.</param>
    /// <param name="paintStays">Whether sound paint stays under the tape.</param>
    /// <param name="hasWelds">Whether strips go along welds first.</param>
    public static InspectionPlanLine FromLay(string tag, ILay lay, bool paintStays = false, bool hasWelds = false)
    {
        ArgumentNullException.ThrowIfNull(lay);
        return new(tag, lay.Surface.Area, paintStays, hasWelds, lay.LayersEverywhere);
    }

    /// <summary>Name, area and what lies under the tape.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Tag}, {this.m2.Bare:0.##} m2, {(this.PaintStays ? "over paint" : "bare")}{(this.HasWelds ? ", welds" : string.Empty)}, {this.Layers} layer(s)");
}
