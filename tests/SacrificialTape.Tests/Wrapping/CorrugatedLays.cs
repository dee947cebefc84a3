using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Strips on corrugated sheet: cover counted along the folded profile, inside corners counted one by one.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 150)]
public sealed class CorrugatedLays
{
    [Property]
    public void Every_spot_of_the_folded_sheet_lies_under_a_strip(SpanCase given, byte seed)
    {
        CorrugatedPanel panel = Sheet(given, seed);
        double wander = seed % 3 == 0 ? 0 : given.LapMm / 2;
        foreach (CorrugatedDirection direction in Enum.GetValues<CorrugatedDirection>())
        {
            var lay = new CorrugatedLay(panel, Stock(given.WidthMm), direction, Mm(given.LapMm), Choices(wander));
            bool along = direction == CorrugatedDirection.AlongFlutes;
            double spacing = given.WidthMm - lay.Lap.Millimeters;

            // Along: how far round the folds a spot lies. Across: how far along the sheet; a strip must reach the last fold.
            List<double> walked = Walk(panel, seed);
            double[] spots = along ? [.. walked] : [.. walked.Select(at => at / walked[^1] * panel.Length.Millimeters)];
            if (!along)
            {
                Near.Equal(walked[^1], lay.Strips.Single().Length.Millimeters, 1e-9, absolute: 0.001);
            }

            int least = spots.Concat(Joints(lay.SideBySide, spacing, given.WidthMm, spots[^1])).Min(at => Over(at, lay.SideBySide, spacing, given.WidthMm, wander));
            Assert.True(least >= lay.LayersEverywhere, $"{least} layers where {lay.LayersEverywhere} were promised.");
            if (wander == 0)
            {
                Assert.Equal(1, lay.LayersEverywhere);
                Assert.Equal(1, least);
            }
        }
    }

    [Property]
    public void The_ledger_closes_and_more_lap_never_takes_fewer_metres(SpanCase given, byte seed)
    {
        CorrugatedPanel panel = Sheet(given, seed);
        foreach (CorrugatedDirection direction in Enum.GetValues<CorrugatedDirection>())
        {
            var lay = new CorrugatedLay(panel, Stock(given.WidthMm), direction, Mm(given.LapMm), Choices());
            PanelLays.Ledger(lay, panel.Area.SquareMeters);
            Assert.True(lay.LayersOnAverage.Ratio >= 1 - 1e-4);
            var more = new CorrugatedLay(panel, Stock(given.WidthMm), direction, Mm((given.LapMm + given.WidthMm) / 2), Choices());
            Assert.True(more.Strips[0].TotalLength.Millimeters >= lay.Strips[0].TotalLength.Millimeters);
        }
    }

    [Property]
    public void Without_depth_it_is_a_flat_panel(SpanCase given)
    {
        var sheet = new CorrugatedPanel(Mm(200), Mm(80), Mm(60), Mm(0), 7, Mm(10 + given.SpanMm), Mm(150));
        var flat = new RectangularPanel(Mm(1550), Mm(10 + given.SpanMm));
        foreach ((CorrugatedDirection one, PanelDirection other) in new[]
        {
            (CorrugatedDirection.AlongFlutes, PanelDirection.AlongHeight), (CorrugatedDirection.AcrossFlutes, PanelDirection.AlongWidth),
        })
        {
            var folded = new CorrugatedLay(sheet, Stock(given.WidthMm), one, Mm(given.LapMm));
            var laid = new PanelLay(flat, Stock(given.WidthMm), other, Mm(given.LapMm));
            Assert.Equal(laid.Lap.Millimeters, folded.Lap.Millimeters, 1e-9);
            Assert.Equal(
                laid.Strips.Select(static strip => (strip.Count, strip.LengthUm)), folded.Strips.Select(static strip => (strip.Count, strip.LengthUm)));

            // Cover and trim of a strip are rounded to whole micrometres, and the two ways of working them out may round apart.
            Assert.All(laid.Strips.Zip(folded.Strips), static pair =>
            {
                Assert.InRange(pair.First.CoverUm - pair.Second.CoverUm, -1, 1);
                Assert.InRange(pair.First.TrimUm - pair.Second.TrimUm, -1, 1);
            });
            Assert.Equal(0, folded.InsideCornersAlongFlutes);
            Assert.Equal(laid.Judge(RuleSet.Default, "P").Count(), folded.Judge(RuleSet.Default, "P").Count());
        }
    }

    [Property]
    public void Inside_corners_are_those_of_the_worst_place_to_begin(SpanCase given, byte seed)
    {
        CorrugatedPanel panel = Sheet(given, seed);
        var lay = new CorrugatedLay(panel, Stock(given.WidthMm), CorrugatedDirection.AlongFlutes, Mm(given.LapMm), Choices());
        double web = (panel.DevelopedPitch.Millimeters - panel.CrownWidth.Millimeters - panel.ValleyWidth.Millimeters) / 2;
        var corners = new List<double>();
        for (int i = 0; i < panel.Corrugations && panel.Depth.Millimeters > 0; i++)
        {
            double valley = (i * panel.DevelopedPitch.Millimeters) + panel.CrownWidth.Millimeters + web;
            corners.Add(valley);
            if (panel.ValleyWidth.Millimeters > 0)
            {
                corners.Add(valley + panel.ValleyWidth.Millimeters);
            }
        }

        int most = corners.Select(begin => corners.Count(at => at >= begin && at - begin < given.WidthMm * (1 - 1e-9))).DefaultIfEmpty(0).Max();
        Assert.Equal(most, lay.InsideCornersAlongFlutes);
    }

    [Fact]
    public void A_strip_narrower_than_the_floor_of_a_single_valley_meets_one_corner() =>
        this.Inside_corners_are_those_of_the_worst_place_to_begin(new SpanCase(4879, 104.7, 11.5), 36);

    [Fact]
    public void What_cannot_be_pressed_in_is_found()
    {
        // Crown 60, valley 60, webs of 50: along the flutes a 100 mm strip reaches over both corners of a valley.
        var wide = new CorrugatedPanel(Mm(200), Mm(60), Mm(60), Mm(30), 10, Mm(3000));
        Assert.Equal([RuleIds.MaximumInsideCorners], Said(wide, CorrugatedDirection.AlongFlutes, 100));
        Assert.Empty(Said(wide, CorrugatedDirection.AlongFlutes, 60));
        Assert.Empty(Said(wide, CorrugatedDirection.AcrossFlutes, 100));

        // A fine corrugation: crown 6, valley 6, 8 mm between crowns.
        var fine = new CorrugatedPanel(Mm(14), Mm(6), Mm(6), Mm(10), 50, Mm(3000));
        Assert.Equal([RuleIds.MinimumFoldFace, RuleIds.MinimumValleyOpening], Said(fine, CorrugatedDirection.AcrossFlutes, 100));
    }

    [Fact]
    public void What_is_refused()
    {
        var sheet = new CorrugatedPanel(Mm(200), Mm(60), Mm(60), Mm(30), 10, Mm(3000));
        Errors.Refused(() => new CorrugatedLay(sheet, Stock(50), CorrugatedDirection.AlongFlutes, Mm(50)), "leastLap", "50 mm", "less than the strip is wide");
        Errors.Refused(() => new CorrugatedLay(sheet, Stock(50), (CorrugatedDirection)7, Mm(5)), "direction", "7");
    }

    private static string[] Said(CorrugatedPanel panel, CorrugatedDirection direction, double width) =>
        [.. new CorrugatedLay(panel, Stock(width), direction, Mm(10)).Judge(RuleSet.Default, "C-1").Select(static finding => finding.Rule.Id)];

    private static CorrugatedPanel Sheet(SpanCase given, byte seed)
    {
        var random = new Random(seed);
        double pitch = 30 + Math.Round(300 * random.NextDouble(), 1);
        double crown = seed % 5 == 0 ? 0 : Math.Round(pitch * random.NextDouble() / 2, 1);
        double valley = seed % 7 == 0 ? 0 : Math.Round((pitch - crown) * random.NextDouble(), 1);
        return new(Mm(pitch), Mm(crown), Mm(valley), Mm(Math.Round(100 * random.NextDouble(), 1)), 1 + (seed % 12), Mm(given.SpanMm), Mm(seed % 2 == 0 ? 0 : 120));
    }

    // How far round the folds spots lie, by steps along the profile in plain coordinates.
    private static List<double> Walk(CorrugatedPanel panel, int seed)
    {
        var profile = new List<(double X, double Y)> { (0, 0) };
        double run = (panel.Pitch.Millimeters - panel.CrownWidth.Millimeters - panel.ValleyWidth.Millimeters) / 2;
        double depth = panel.Depth.Millimeters;
        for (int i = 0; i < panel.Corrugations; i++)
        {
            profile.Add((profile[^1].X + panel.CrownWidth.Millimeters, 0));
            profile.Add((profile[^1].X + run, -depth));
            profile.Add((profile[^1].X + panel.ValleyWidth.Millimeters, -depth));
            profile.Add((profile[^1].X + run, 0));
        }

        profile.Add((profile[^1].X + panel.FlatWidth.Millimeters, 0));
        var random = new Random(seed);
        var walked = new List<double>();
        double before = 0;
        for (int i = 1; i < profile.Count; i++)
        {
            double face = double.Hypot(profile[i].X - profile[i - 1].X, profile[i].Y - profile[i - 1].Y);
            walked.AddRange([before, before + (face * random.NextDouble()), before + (face / 2), before + face]);
            before += face;
        }

        return walked;
    }

    private static IEnumerable<double> Joints(int count, double spacing, double width, double end) =>
        Enumerable.Range(0, count).SelectMany(i => new[] { (i * spacing) - 0.01, i * spacing, (i * spacing) + 0.01, (i * spacing) + width - 0.01, (i * spacing) + width + 0.01 })
            .Where(at => at >= 0 && at <= end);

    private static int Over(double at, int count, double spacing, double width, double wander)
    {
        int over = 0;
        for (int i = 0; i < count; i++)
        {
            double from = (i * spacing) + (i % 2 == 0 ? 0 : wander);
            over += at >= from - 2e-3 && at <= from + width + 2e-3 ? 1 : 0;
        }

        return over;
    }
}
