using System.Globalization;
using SacrificialTape.Inspection;

namespace SacrificialTape.Reports.Pictures;

/// <summary>An oval patch over the rectangle or ellipse that was cut out.</summary>
internal static class PatchPicture
{
    private const double Wide = 420;

    internal static Picture Of(OvalPatch patch)
    {
        double length = patch.Length.Millimeters;
        double width = patch.Width.Millimeters;
        double scale = Math.Min(Wide / length, 300 / width);
        double x = 40 + (length * scale / 2);
        double y = 60 + (width * scale / 2);
        var canvas = new SvgCanvas(40 + (length * scale) + 260, 60 + (width * scale) + 60);
        canvas.Ellipse(x, y, length * scale / 2, width * scale / 2, SvgCanvas.Pale, SvgCanvas.Ink, 2);
        CutOut cut = patch.CutOut;
        double cutLength = cut.Length.Millimeters * scale;
        double cutWidth = cut.Width.Millimeters * scale;
        if (cut.Shape == CutOutShape.Rectangle)
        {
            canvas.Rectangle(x - (cutLength / 2), y - (cutWidth / 2), cutLength, cutWidth, "#ffffff", SvgCanvas.Orange, 2, "6 4");
        }
        else
        {
            canvas.Ellipse(x, y, cutLength / 2, cutWidth / 2, "#ffffff", SvgCanvas.Orange, 2);
        }

        string size = string.Create(CultureInfo.InvariantCulture, $"oval patch {length:0.#} x {width:0.#} mm");
        string hole = string.Create(CultureInfo.InvariantCulture, $"over a {(cut.Shape == CutOutShape.Rectangle ? "rectangle" : "oval")} {cut.Length.Millimeters:0.#} x {cut.Width.Millimeters:0.#} mm cut out");
        string clear = string.Create(CultureInfo.InvariantCulture, $"clear of it by {patch.ClearDistance.Millimeters:0.##} mm at least");
        canvas.Text(40, 24, size, bold: true);
        canvas.Text(40, 42, hole);
        canvas.Measure(x - (length * scale / 2), x + (length * scale / 2), y + (width * scale / 2) + 24, string.Create(CultureInfo.InvariantCulture, $"{length:0.#} mm"));
        canvas.Text(40 + (length * scale) + 20, y, clear);
        return canvas.Draw(size, $"{char.ToUpperInvariant(size[0])}{size[1..]} {hole}, {clear}.");
    }
}
