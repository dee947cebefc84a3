using System.Globalization;
using System.Text.RegularExpressions;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace PlantSurvey;

/// <summary>
/// What stays clear, in one cell, parted by semicolons: 'name plate 200x100', 'weep hole 3 x D40', and on pipe a band all
/// round, 'flanged joint band 300', or 'isolating joint band 250 at 4000' from the beginning of the pipe. The margins are
/// those of the rules.
/// </summary>
internal static partial class ClearList
{
    private static readonly Dictionary<string, StayClearKind> Kinds = new()
    {
        ["isolating joint"] = StayClearKind.IsolatingJoint,
        ["earth bond"] = StayClearKind.EarthBond,
        ["weep hole"] = StayClearKind.WeepHole,
        ["inspection point"] = StayClearKind.InspectionPoint,
        ["name plate"] = StayClearKind.NamePlate,
        ["flanged joint"] = StayClearKind.FlangedJoint,
        ["moving part"] = StayClearKind.MovingPart,
    };

    internal static ValueList<StayClear> Read(CsvRow row)
    {
        string text = row.TextOr("clear", string.Empty);
        return text.Length == 0
            ? ValueList<StayClear>.Empty
            : row.Try("clear", () => new ValueList<StayClear>(text.Split(';', StringSplitOptions.TrimEntries).Select(Parse))) ?? ValueList<StayClear>.Empty;
    }

    private static StayClear Parse(string text)
    {
        Match match = Form().Match(text);
        if (!match.Success || !Kinds.TryGetValue(match.Groups["kind"].Value, out StayClearKind kind))
        {
            throw new CellException(
                "clear", $"'{text}' is not one of {string.Join(", ", Kinds.Keys)} with a size, such as 'name plate 200x100', 'weep hole 3 x D40' or 'flanged joint band 300' (mm).");
        }

        int count = match.Groups["n"].Success ? int.Parse(match.Groups["n"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) : 1;
        if (match.Groups["b"].Success)
        {
            var band = StayClear.Band(kind, Mm(match.Groups["b"]), count);
            return match.Groups["at"].Success ? band.At(Mm(match.Groups["at"])) : band;
        }

        return match.Groups["d"].Success
            ? StayClear.RoundSpot(kind, Mm(match.Groups["d"]), count)
            : StayClear.Spot(kind, Mm(match.Groups["w"]), Mm(match.Groups["h"]), count);
    }

    private static Length Mm(Group group) =>
        Length.FromMillimeters(double.Parse(group.ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"^(?<kind>[a-z]+ [a-z]+) ((?<n>\d{1,6}) x )?(D(?<d>\d+(\.\d+)?)|(?<w>\d+(\.\d+)?)x(?<h>\d+(\.\d+)?)|band (?<b>\d+(\.\d+)?)( at (?<at>\d+(\.\d+)?))?)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
