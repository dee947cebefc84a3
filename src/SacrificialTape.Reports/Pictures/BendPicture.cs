using System.Globalization;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Reports.Pictures;

/// <summary>Rings on a bend from the side. A ring keeps its width: what it takes of the arc outside is little, inside much.</summary>
internal static class BendPicture
{
    private const double Size = 380;
    private const int ArcSteps = 12;

    internal static Picture Of(BendRingLay rings)
    {
        Bend bend = rings.Bend;
        double outside = bend.BendRadius.Millimeters + (bend.OutsideDiameter.Millimeters / 2);
        double inside = bend.BendRadius.Millimeters - (bend.OutsideDiameter.Millimeters / 2);
        double width = rings.Stock.Width.Millimeters;
        double turn = bend.Angle.Radians;
        double scale = Size / (turn > Math.PI / 2 ? 2 * outside : outside);
        double shift = turn > Math.PI / 2 ? outside * scale : 0;
        double over = width * scale;
        double deep = turn > Math.PI ? 2 * outside * scale : outside * scale;
        var canvas = new SvgCanvas(Size + 420 + over, deep + 70 + over);
        (double X, double Y) At(double radius, double angle) => (30 + over + shift + (radius * scale * Math.Cos(angle)), 50 + (outside * scale) - (radius * scale * Math.Sin(angle)));
        IEnumerable<(double, double)> Arc(double radius, double from, double to) =>
            Enumerable.Range(0, ArcSteps + 1).Select(step => At(radius, from + ((to - from) * step / ArcSteps)));
        canvas.Polygon(Arc(outside, 0, turn).Concat(Arc(inside, turn, 0)), SvgCanvas.Light, 1);

        // Rings stand at even angles, the first and last lapping past the tangents as far as they do past each other.
        double step = (width - rings.OutsideLap.Millimeters) / outside;
        double first = (turn - ((rings.Rings - 1) * step)) / 2;
        for (int ring = 0; ring < rings.Rings; ring++)
        {
            double middle = first + (ring * step);
            double halfOutside = width / 2 / outside;
            double halfInside = width / 2 / inside;
            canvas.Polygon(
                Arc(outside, middle - halfOutside, middle + halfOutside).Concat(Arc(inside, middle + halfInside, middle - halfInside)), SvgCanvas.Blue, 0.3);
        }

        string laps = string.Create(CultureInfo.InvariantCulture, $"lap outside {rings.OutsideLap.Millimeters:0.#} mm, inside {rings.InsideLap.Millimeters:0.#} mm");
        string what = string.Create(CultureInfo.InvariantCulture, $"{rings.Rings} ring(s) of strip {width:0.#} mm wide");
        canvas.Text(30, 20, $"{bend.Description}, from the side", bold: true);
        canvas.Text(30, 38, "darker where rings lap");
        canvas.Text(Size + 70 + over, 80, what);
        canvas.Text(Size + 70 + over, 102, laps);
        canvas.Text(Size + 70 + over, 124, "hold the lap outside; inside it widens by itself");
        return canvas.Draw($"{bend.Description}: {rings.Description}", $"The bend from the side with {what}, {laps}. The rings fan out: on the inside of the bend they lie over each other far more than on the outside.");
    }
}
