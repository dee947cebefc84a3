using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A flat ring, covered on one face less its openings.</summary>
/// <remarks>
/// Outside diameter: 10 mm to 100 m; inside 1 mm and more, less than the outside. A rectangular opening without a place is held against the
/// ring with either side towards the middle.
/// </remarks>
public sealed record AnnularPanel : Panel
{
    private readonly StoredNumber outsideMm;
    private readonly StoredNumber insideMm;

    /// <summary>Describes a ring.</summary>
    /// <param name="outsideDiameter">Diameter of its outer edge.</param>
    /// <param name="insideDiameter">Diameter of its hole.</param>
    /// <param name="openings">Openings to be left out besides the hole; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or an opening is larger than the ring is wide.</exception>
    /// <exception cref="ArgumentException">An opening does not fit; openings overlap or leave nothing of the ring.</exception>
    public AnnularPanel(Length outsideDiameter, Length insideDiameter, IEnumerable<PanelOpening>? openings = null)
        : base(openings?.Listed())
    {
        double outside = FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter));
        this.outsideMm = new StoredNumber(outside);
        this.insideMm = new StoredNumber(FittingRanges.LessThan(insideDiameter, outside, nameof(insideDiameter)));
        this.CheckOpenings(nameof(openings));
    }

    /// <summary>Diameter of the outer edge.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.outsideMm.Bare);

    /// <summary>Diameter of the hole.</summary>
    public Length InsideDiameter => Length.FromMillimeters(this.insideMm.Bare);

    internal override string Form => string.Create(
        CultureInfo.InvariantCulture, $"ring {this.outsideMm.Bare:0.##} mm outside, {this.insideMm.Bare:0.##} mm inside");

    internal override double GrossSquareMeters<TSteps>(TSteps steps) =>
        PanelKernel.RingSquareMeters(this.outsideMm.Bare, this.insideMm.Bare, steps);

    private protected override void CheckSize(PanelOpening opening, string parameter)
    {
        double outside = this.outsideMm.Bare;
        double inside = this.insideMm.Bare;
        if (opening.IsRound)
        {
            if (!WithAllowance.AtMost(opening.WidthMm, (outside - inside) / 2))
            {
                throw AcceptedRange.Between(1, (outside - inside) / 2, "mm").Noting("the width of the ring").Refuse(opening.WidthMm, parameter);
            }
        }
        else if (!PanelFit.FitsRing(opening.WidthMm, opening.HeightMm, outside, inside)
            && !PanelFit.FitsRing(opening.HeightMm, opening.WidthMm, outside, inside))
        {
            throw new ArgumentException($"The opening {opening} does not fit between the hole and the edge of the {this.Form}.", parameter);
        }
    }

    private protected override bool Holds(PanelOpening opening) =>
        PanelFit.InCircle(opening, this.outsideMm.Bare) && PanelFit.ClearOfCircle(opening, this.insideMm.Bare);
}
