using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A flat rectangular panel, covered on one face less its openings.</summary>
/// <remarks>Width and height: 10 mm to 1000 m.</remarks>
public sealed record RectangularPanel : Panel
{
    private readonly StoredNumber widthMm;
    private readonly StoredNumber heightMm;

    /// <summary>Describes a panel.</summary>
    /// <param name="width">Width.</param>
    /// <param name="height">Height.</param>
    /// <param name="openings">Openings to be left out; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or an opening is larger than the panel.</exception>
    /// <exception cref="ArgumentException">Openings lie outside the panel, overlap or leave nothing of it.</exception>
    public RectangularPanel(Length width, Length height, IEnumerable<PanelOpening>? openings = null)
        : base(openings?.Listed())
    {
        this.widthMm = new StoredNumber(FittingRanges.SideMm(width, nameof(width)));
        this.heightMm = new StoredNumber(FittingRanges.SideMm(height, nameof(height)));
        this.CheckOpenings(nameof(openings));
    }

    /// <summary>Width.</summary>
    public Length Width => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Height.</summary>
    public Length Height => Length.FromMillimeters(this.heightMm.Bare);

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture, $"panel {this.widthMm.Bare:0.##} x {this.heightMm.Bare:0.##} mm");

    internal override double GrossSquareMeters<TSteps>(TSteps steps) =>
        PanelKernel.RectangleSquareMeters(this.widthMm.Bare, this.heightMm.Bare, steps);

    private protected override void CheckSize(PanelOpening opening, string parameter)
    {
        _ = FittingRanges.Within(opening.WidthMm, 1, this.widthMm.Bare, parameter);
        _ = FittingRanges.Within(opening.HeightMm, 1, this.heightMm.Bare, parameter);
    }

    private protected override bool Holds(PanelOpening opening) =>
        PanelFit.InRectangle(opening, this.widthMm.Bare, this.heightMm.Bare);
}
