using System.Globalization;
using System.Text.RegularExpressions;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace PlantSurvey;

/// <summary>
/// Openings in one cell, parted by semicolons: '2 x D500' for two round ones, '600x400' for a rectangle, '600x400 at 900,500'
/// where its middle is.
/// </summary>
internal static partial class OpeningList
{
    internal static ValueList<PanelOpening> OfPanel(ShapeCells cells) => new(Parts(cells).Select(static one =>
    {
        PanelOpening opening = one.Diameter is { } diameter
            ? PanelOpening.Circular(diameter, one.Count)
            : PanelOpening.Rectangular(one.Width, one.Height, one.Count);
        return one.Place is { } place ? opening.At(place.Right, place.Up) : opening;
    }));

    internal static ValueList<ShellOpening> OfShell(ShapeCells cells) => new(Parts(cells).Select(static one =>
        one.Place is not null
            ? throw new CellException("openings", "Openings in a shell have no place here; leave out what follows 'at'.")
            : one.Diameter is { } diameter
                ? ShellOpening.Round(diameter, one.Count)
                : ShellOpening.Rectangular(one.Width, one.Height, one.Count)));

    private static IEnumerable<Opening> Parts(ShapeCells cells) => cells.Has("openings")
        ? cells.Text("openings").Split(';', StringSplitOptions.TrimEntries).Select(Parse)
        : [];

    private static Opening Parse(string text)
    {
        Match match = Form().Match(text);
        if (!match.Success)
        {
            throw new CellException("openings", $"'{text}' is not an opening such as '2 x D500', '600x400' or '600x400 at 900,500' (mm, decimal points).");
        }

        Length? diameter = match.Groups["d"].Success ? Mm(match.Groups["d"]) : null;
        return new(
            match.Groups["n"].Success ? int.Parse(match.Groups["n"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) : 1,
            diameter,
            diameter ?? Mm(match.Groups["w"]),
            diameter ?? Mm(match.Groups["h"]),
            match.Groups["r"].Success ? (Mm(match.Groups["r"]), Mm(match.Groups["u"])) : null);
    }

    private static Length Mm(Group group) => Length.FromMillimeters(double.Parse(group.ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"^((?<n>\d{1,6}) x )?(D(?<d>\d+(\.\d+)?)|(?<w>\d+(\.\d+)?)x(?<h>\d+(\.\d+)?))( at (?<r>\d+(\.\d+)?),(?<u>\d+(\.\d+)?))?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Form();

    private readonly record struct Opening(int Count, Length? Diameter, Length Width, Length Height, (Length Right, Length Up)? Place);
}
