using System.Globalization;
using SacrificialTape.Contact;
using SacrificialTape.Rules;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Jobs;

/// <summary>The working order of a line, from the trade's common practice (no source).</summary>
internal static class CrewSteps
{
    internal static IEnumerable<CrewStep> For(SurveyLine line, IEnumerable<Finding> findings)
    {
        Finding[] stops = [.. findings.Where(static finding => finding.Severity == Severity.Stop)];
        if (stops.Length > 0)
        {
            // Nobody on site reads on past the first step: a line that must not be taped has no others.
            foreach (Finding stop in stops)
            {
                yield return new(CrewActivity.Stop, $"Do not begin. {stop.Message}");
            }

            yield break;
        }

        if (CrewCautions.For(line) is { Length: > 0 } cautions)
        {
            yield return new(CrewActivity.Cautions, cautions);
        }

        yield return new(CrewActivity.Clean, Clean(line));
        if (line.AllStayClear is { Count: > 0 } clear)
        {
            yield return new(CrewActivity.MarkClear, MarkClear.Text(clear));
        }

        if (line.Steel.WindowsInPaint is { Count: > 0 } windows)
        {
            yield return new(CrewActivity.Windows, Windows(windows));
        }

        if (line.Needs.Windows is { Windows.Count: > 0 } layout)
        {
            yield return new(CrewActivity.Windows, WindowsAtPlaces(layout));
        }

        if (line.Welds is { } welds)
        {
            yield return new(CrewActivity.Welds, Welds(welds));
        }

        yield return new(CrewActivity.Lay, line.Lay.Instruction + Direction(line) + CutOut(line));
        yield return new(CrewActivity.RollDown, CrewTools.RollDown(line));
        yield return new(CrewActivity.Look,
            "Look for creases, bubbles and open edges: press creases flat with a blunt hard tool; prick bubbles, press them down, patch if needed. The last edge faces down.");
        if (line.PaintOver is not null)
        {
            yield return new(CrewActivity.Paint,
                "Paint over the tape as over galvanized steel: no alkyd or oil paint next to zinc. Mind fumes; follow the paint's data sheet and local rules.");
        }
    }

    private static string Clean(SurveyLine line) => line.Steel.WindowsInPaint is null && (line.Needs.Windows is null || line.Needs.Under != UnderTape.SoundPaint)
        ? line.Needs.Windows is not null
            ? "Brush off what is loose, degrease, wipe with solvent, let it dry completely; tight scale or rust stays. No primer. Have paint that is or was there tested for lead and chromate first and follow local rules. Mind fumes and sparks, heat, pressure and height; follow the site's permit."
            : "Degrease, wire-brush by machine, wipe with solvent, let it dry completely. No primer. If there is or was paint, have it tested for lead and chromate before anyone brushes it, and follow local rules. Mind fumes and sparks, heat, pressure and height; follow the site's permit."
        : "Take off loose paint, degrease, roughen the sound paint, wipe, let it dry completely. Have old paint tested for lead and chromate first and follow local rules. Mind fumes, heat, pressure and height; follow the site's permit.";

    private static string Windows(ContactWindows windows) => string.Create(
        CultureInfo.InvariantCulture,
        $"Bare {windows.Count} contact window(s) of {windows.WindowM2 * 1e4:0.#} cm2 to bright metal, spread evenly over the line, and tape them the same day.");

    private static string WindowsAtPlaces(WindowLayout layout)
    {
        var list = new MarkingList(layout);
        return $"Mark and bare {layout.Windows.Count} contact window(s) to bright metal, feather the paint at their edges, and tape them the same day; repaint what the tape leaves bare. {list.From} {string.Join("; ", list.Marks)}.";
    }

    private static string Welds(WeldWork welds) =>
        string.Join(' ', welds.Seams.Select(seam => WeldStrips.Instruction(seam, welds.Stock, welds.EndLap)));

    // A blade on the steel scores it, and a score on a pipe under pressure is a place to crack from.
    private static string CutOut(SurveyLine line) => line.Spots.Count == 0
        ? string.Empty
        : " Where a strip crosses a marked spot, mark the strip, cut it out off the steel, and lay it round the spot: never cut with a blade on the steel.";

    private static string Direction(SurveyLine line) => (line.Steel.Orientation, line.Lay.Course) switch
    {
        (LineOrientation.Vertical, StripCourse.Round or StripCourse.RoundWithEndLap) => " Work from the bottom up, so that each lap sheds water.",
        (LineOrientation.Horizontal, StripCourse.RoundWithEndLap) => " Let the free edge of an end lap face down on the side of the pipe, not at its lowest point.",
        (LineOrientation.Horizontal, StripCourse.Along) => " Work from the bottom up on both sides, so that each lap sheds water.",
        _ => string.Empty,
    };
}
