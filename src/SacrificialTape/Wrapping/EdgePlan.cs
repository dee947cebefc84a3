using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>An edge as a lay sees it: its straight sides in order, which of them go on round a corner, and its bands.</summary>
/// <remarks>A round rim has a diameter and no sides; straight ones have the diameter zero. Closed: the last side meets the first.</remarks>
internal sealed record EdgePlan(
    Surface Surface,
    ValueList<double> SidesMm,
    bool IsClosed,
    double DiameterMm,
    double ThicknessMm,
    double FrontMm,
    double BackMm,
    int OutsideCorners,
    int InsideCorners)
{
    // A walk round right angles comes back to its beginning when it has turned once, by four corners more of one kind.
    private const int CornersOfATurn = 4;

    internal static EdgePlan Of(SheetEdge edge, ValueList<Length>? sides)
    {
        ArgumentNullException.ThrowIfNull(edge);
        int corners = edge.OutsideCorners + edge.InsideCorners;
        bool closed = Math.Abs(edge.OutsideCorners - edge.InsideCorners) == CornersOfATurn;
        int count = closed ? corners : corners + 1;
        return new(
            edge,
            sides is null ? Alike(edge.LengthMm, count) : Stated(sides, edge.LengthMm, count),
            closed,
            0,
            edge.ThicknessMm,
            edge.FrontMm,
            edge.BackMm,
            edge.OutsideCorners,
            edge.InsideCorners);
    }

    internal static EdgePlan Of(WindowOpening opening)
    {
        ArgumentNullException.ThrowIfNull(opening);
        return new(
            opening,
            opening.IsRound ? [] : [opening.WidthMm, opening.HeightMm, opening.WidthMm, opening.HeightMm],
            true,
            opening.IsRound ? opening.WidthMm : 0,
            opening.ThicknessMm,
            opening.FrontMm,
            opening.BackMm,
            0,
            opening.IsRound ? 0 : CornersOfATurn);
    }

    private static ValueList<double> Alike(double lengthMm, int count) => new(Enumerable.Repeat(lengthMm / count, count));

    private static ValueList<double> Stated(ValueList<Length> sides, double lengthMm, int count)
    {
        if (sides.Count != count)
        {
            throw new ArgumentException($"{sides.Count} side(s) are stated, but the corners make {count}.", nameof(sides));
        }

        double[] stated = [.. sides.Select(side => AcceptedRange.AboveUpTo(0, lengthMm, "mm").Check(UnitConversions.Millimeters(side), nameof(sides)))];
        return WithAllowance.AtMost(stated.Sum(), lengthMm) && WithAllowance.AtLeast(stated.Sum(), lengthMm)
            ? new(stated)
            : throw new ArgumentException(
                FormattableString.Invariant($"The sides come to {stated.Sum():0.######} mm, the edge to {lengthMm:0.######} mm."), nameof(sides));
    }
}
