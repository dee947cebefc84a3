using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>Whether openings lie within panels and clear of each other. Touching counts as clear.</summary>
internal static class PanelFit
{
    /// <summary>Whether two placed openings overlap.</summary>
    internal static bool Overlap(PanelOpening one, PanelOpening other)
    {
        double right = Math.Abs(one.RightMm - other.RightMm);
        double up = Math.Abs(one.UpMm - other.UpMm);
        if (one.IsRound && other.IsRound)
        {
            return WithAllowance.Below(double.Hypot(right, up), (one.WidthMm + other.WidthMm) / 2);
        }

        if (one.IsRound || other.IsRound)
        {
            // From the middle of the circle to the nearest point of the rectangle.
            (PanelOpening circle, PanelOpening rectangle) = one.IsRound ? (one, other) : (other, one);
            double aside = Math.Max(0, right - (rectangle.WidthMm / 2));
            double above = Math.Max(0, up - (rectangle.HeightMm / 2));
            return WithAllowance.Below(double.Hypot(aside, above), circle.WidthMm / 2);
        }

        return WithAllowance.Below(right, (one.WidthMm + other.WidthMm) / 2)
            && WithAllowance.Below(up, (one.HeightMm + other.HeightMm) / 2);
    }

    /// <summary>Whether a placed opening lies within a rectangle about the middle.</summary>
    internal static bool InRectangle(PanelOpening opening, double widthMm, double heightMm) =>
        WithAllowance.AtMost(Math.Abs(opening.RightMm) + (opening.WidthMm / 2), widthMm / 2)
        && WithAllowance.AtMost(Math.Abs(opening.UpMm) + (opening.HeightMm / 2), heightMm / 2);

    /// <summary>Whether a placed opening lies within a circle about the middle.</summary>
    internal static bool InCircle(PanelOpening opening, double diameterMm)
    {
        double right = Math.Abs(opening.RightMm);
        double up = Math.Abs(opening.UpMm);
        double farthest = opening.IsRound
            ? double.Hypot(right, up) + (opening.WidthMm / 2)
            : double.Hypot(right + (opening.WidthMm / 2), up + (opening.HeightMm / 2));
        return WithAllowance.AtMost(farthest, diameterMm / 2);
    }

    /// <summary>Whether a placed opening keeps clear of a circle about the middle.</summary>
    internal static bool ClearOfCircle(PanelOpening opening, double diameterMm) =>
        !Overlap(opening, PanelOpening.Circular(UnitsNet.Length.FromMillimeters(diameterMm)).At(UnitsNet.Length.Zero, UnitsNet.Length.Zero));

    /// <summary>
    /// Whether a rectangle fits into a ring with one side square to a radius. A line parts any rectangle in the ring from
    /// the hole, so it lies in the piece that a tangent of the hole cuts off; there it sits best on the tangent's middle.
    /// </summary>
    internal static bool FitsRing(double tangentMm, double radialMm, double outsideMm, double insideMm) =>
        WithAllowance.AtMost(double.Hypot((insideMm / 2) + radialMm, tangentMm / 2), outsideMm / 2);
}
