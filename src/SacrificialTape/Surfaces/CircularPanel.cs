using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A flat disc, covered on one face less its openings.</summary>
/// <remarks>Diameter: 10 mm to 100 m.</remarks>
public sealed record CircularPanel : Panel
{
    private readonly StoredNumber diameterMm;

    /// <summary>Describes a disc.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <param name="openings">Openings to be left out; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or an opening is larger than the disc.</exception>
    /// <exception cref="ArgumentException">Openings lie outside the disc, overlap or leave nothing of it.</exception>
    public CircularPanel(Length diameter, IEnumerable<PanelOpening>? openings = null)
        : base(openings?.Listed())
    {
        this.diameterMm = new StoredNumber(FittingRanges.LargeDiameterMm(diameter, nameof(diameter)));
        this.CheckOpenings(nameof(openings));
    }

    /// <summary>Diameter.</summary>
    public Length Diameter => Length.FromMillimeters(this.diameterMm.Bare);

    internal override string Form => string.Create(CultureInfo.InvariantCulture, $"disc {this.diameterMm.Bare:0.##} mm");

    internal override double GrossSquareMeters<TSteps>(TSteps steps) =>
        PanelKernel.DiscSquareMeters(this.diameterMm.Bare, steps);

    // The diagonal of a rectangle must fit: what is refused is the diagonal, which the message says.
    private protected override void CheckSize(PanelOpening opening, string parameter)
    {
        double across = opening.IsRound ? opening.WidthMm : double.Hypot(opening.WidthMm, opening.HeightMm);
        if (!WithAllowance.AtMost(across, this.diameterMm.Bare))
        {
            throw AcceptedRange.Between(1, this.diameterMm.Bare, "mm")
                .Noting(opening.IsRound ? "the diameter of the disc" : "the diagonal of the opening, held against the diameter of the disc")
                .Refuse(across, parameter);
        }
    }

    private protected override bool Holds(PanelOpening opening) => PanelFit.InCircle(opening, this.diameterMm.Bare);
}
