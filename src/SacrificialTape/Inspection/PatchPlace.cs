using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>On what steel a patch lies: flat, round a pipe, on a bend, or folded over an edge.</summary>
/// <remarks>Pipe: as for straight pipe. Edge radius: more than 0, at most 1 m. A bend curves two ways, so that a patch strains at its edges.</remarks>
public sealed record PatchPlace
{
    private readonly StoredNumber diameterMm;
    private readonly StoredNumber edgeMm;

    private PatchPlace(StoredNumber diameter = default, StoredNumber edge = default, Bend? bend = null)
    {
        this.diameterMm = diameter;
        this.edgeMm = edge;
        this.Bend = bend;
    }

    /// <summary>Flat steel, or steel so large that it is as good as flat.</summary>
    public static PatchPlace Flat { get; } = new();

    /// <summary>The bend, if it is one.</summary>
    public Bend? Bend { get; }

    /// <summary>Outside diameter of the pipe or the bend; null where there is none.</summary>
    public Length? OutsideDiameter => this.DiameterMm is { } mm ? Length.FromMillimeters(mm) : null;

    /// <summary>Radius of the edge that the patch is folded over; null where there is none.</summary>
    public Length? EdgeRadius => this.EdgeMm is { } mm ? Length.FromMillimeters(mm) : null;

    internal double? DiameterMm => this.Bend?.DiameterMm ?? (this.diameterMm.IsSet ? this.diameterMm.Bare : null);

    internal double? EdgeMm => this.edgeMm.IsSet ? this.edgeMm.Bare : null;

    /// <summary>Round a straight pipe.</summary>
    /// <param name="outsideDiameter">Of the pipe.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static PatchPlace OnPipe(Length outsideDiameter) => new(diameter: new StoredNumber(
        AcceptedRange.Between(1, 100_000, "mm").Check(UnitConversions.Millimeters(outsideDiameter), nameof(outsideDiameter))));

    /// <summary>On a bend.</summary>
    /// <param name="bend">The bend.</param>
    public static PatchPlace OnBend(Bend bend)
    {
        ArgumentNullException.ThrowIfNull(bend);
        return new(bend: bend);
    }

    /// <summary>Folded over an edge.</summary>
    /// <param name="radius">Radius of the edge, more than 0, at most 1 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is outside its range.</exception>
    public static PatchPlace OverEdge(Length radius) => new(edge: new StoredNumber(
        AcceptedRange.AboveUpTo(0, 1000, "mm").Check(UnitConversions.Millimeters(radius), nameof(radius))));

    /// <summary>The place in a few words.</summary>
    public override string ToString() => this.Bend is { } bend ? bend.Description
        : this.EdgeMm is { } edge ? string.Create(CultureInfo.InvariantCulture, $"over an edge of radius {edge:0.##} mm")
        : this.DiameterMm is { } diameter ? string.Create(CultureInfo.InvariantCulture, $"on pipe {diameter:0.##} mm")
        : "flat";
}
