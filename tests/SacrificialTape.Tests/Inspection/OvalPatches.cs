using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Inspection;

/// <summary>The smallest oval round a cut-out, by walking round both in small steps.</summary>
[Properties(Arbitrary = [typeof(InspectionCases)], MaxTest = 100)]
public sealed class OvalPatches
{
    [Property]
    public void The_oval_clears_the_cut_out_by_the_margin_and_touches_it(CutOutCase given)
    {
        var patch = OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm));
        double walked = Walked(given, patch.Length.Millimeters, patch.Width.Millimeters);
        Near.Equal(given.MarginMm, walked, 1e-4);
        Assert.True(walked >= given.MarginMm * (1 - 1e-9));
        Near.Equal(given.MarginMm, patch.ClearDistance.Millimeters, 1e-9);
        Rule own = RuleSet.Default[RuleIds.MinimumPatchMargin].WithLimit(new Measure(given.MarginMm, TradeUnit.Millimeter), Basis.OwnExperience("made up"));
        Assert.DoesNotContain(patch.Judge(RuleSet.Default.With("own", "1", own), "here"), static one => one.Rule.Id == RuleIds.MinimumPatchMargin);
    }

    [Property]
    public void One_percent_smaller_does_not_clear(CutOutCase given)
    {
        var patch = OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm));
        var smaller = new OvalPatch(given.CutOut, patch.Length * 0.99, patch.Width * 0.99);
        Assert.True(smaller.ClearDistance.Millimeters < given.MarginMm);
        Assert.True(Walked(given, smaller.Length.Millimeters, smaller.Width.Millimeters) < given.MarginMm);
    }

    // Any other length, with the least width that clears: more area.
    [Property]
    public void No_other_oval_is_smaller(CutOutCase given)
    {
        var patch = OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm));
        double least = patch.Length.Millimeters * patch.Width.Millimeters;
        foreach (double stretched in new[] { 0.9, 0.97, 0.995, 1.005, 1.03, 1.1, 1.4 })
        {
            double length = patch.Length.Millimeters * stretched;
            if (length <= (given.LengthMm + (2 * given.MarginMm)) * 1.000001)
            {
                continue;
            }

            (double low, double high) = (1, 1e4);
            for (int i = 0; i < 60; i++)
            {
                double middle = (low + high) / 2;
                bool clears = new OvalPatch(given.CutOut, Mm(length), Mm(middle)).ClearDistance.Millimeters >= given.MarginMm;
                (low, high) = clears ? (low, middle) : (middle, high);
            }

            Assert.True(length * high >= least * (1 - 1e-9), $"{length} x {high} against {least}");
        }
    }

    [Property]
    public void A_larger_cut_out_never_takes_a_smaller_patch(CutOutCase given)
    {
        var patch = OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm));
        Assert.True(OvalPatch.Smallest(given.Larger, Mm(given.MarginMm)).Area.SquareMeters >= patch.Area.SquareMeters * (1 - 1e-12));
        Assert.True(OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm * given.Grown)).Area.SquareMeters >= patch.Area.SquareMeters * (1 - 1e-12));
        var rounded = OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm), Mm(5));
        Assert.True(rounded.ClearDistance.Millimeters >= given.MarginMm * (1 - 1e-9));
        Assert.InRange(rounded.Length.Millimeters - patch.Length.Millimeters, -1e-6, 5);
        Assert.Equal(0, Math.IEEERemainder(rounded.Width.Millimeters, 5), 1e-9);
    }

    [Property]
    public void Growing_the_axes_of_an_oval_by_the_margin_is_not_enough(CutOutCase given)
    {
        var oval = CutOut.Ellipse(Mm(given.LengthMm), Mm(given.WidthMm));
        var grown = new OvalPatch(oval, Mm(given.LengthMm + (2 * given.MarginMm)), Mm(given.WidthMm + (2 * given.MarginMm)));
        bool round = Math.Abs(given.LengthMm - given.WidthMm) < 1e-3;
        Assert.True(round || grown.ClearDistance.Millimeters < given.MarginMm);
        Near.Equal(Walked(given with { IsRectangle = false }, grown.Length.Millimeters, grown.Width.Millimeters), grown.ClearDistance.Millimeters, 1e-4);
    }

    [Fact]
    public void Known_ovals()
    {
        // Round a circle a circle; round a rectangle without a margin the sides times the root of two.
        var circle = OvalPatch.Smallest(CutOut.Circle(Mm(40)), Mm(5));
        Near.Equal(50, circle.Length.Millimeters, 1e-12);
        Near.Equal(50, circle.Width.Millimeters, 1e-12);
        var rectangle = OvalPatch.Smallest(CutOut.Rectangle(Mm(80), Mm(30)), Mm(0));
        Near.Equal(80 * Math.Sqrt(2), rectangle.Length.Millimeters, 1e-12);
        Near.Equal(30 * Math.Sqrt(2), rectangle.Width.Millimeters, 1e-12);
        var square = OvalPatch.Smallest(CutOut.Rectangle(Mm(40), Mm(40)), Mm(5));
        Near.Equal((40 * Math.Sqrt(2)) + 10, square.Length.Millimeters, 1e-12);
    }

    [Fact]
    public void The_margin_is_held_against_the_rules()
    {
        var cutOut = CutOut.Rectangle(Mm(80), Mm(30));
        Assert.Equal(RuleIds.MinimumPatchMargin, Assert.Single(OvalPatch.Smallest(cutOut, Mm(4)).Judge(RuleSet.Default, "here")).Rule.Id);
        Finding lap = Assert.Single(OvalPatch.Smallest(cutOut, Mm(5)).Judge(RuleSet.Default, "here"));
        Assert.Equal(RuleIds.PatchBelowLap, lap.Rule.Id);
        Assert.Equal("10 mm", lap.Limit.ToString());
        Assert.Empty(OvalPatch.Smallest(cutOut, Mm(10)).Judge(RuleSet.Default, "here"));
        Assert.True(new OvalPatch(cutOut, Mm(80), Mm(30)).ClearDistance.Millimeters < 0);
    }

    [Fact]
    public void Bad_sizes_are_refused()
    {
        Errors.Refused(static () => CutOut.Circle(Mm(0)), "diameter");
        Errors.Refused(static () => CutOut.Rectangle(Mm(10), Mm(-1)), "width");
        Errors.Refused(static () => CutOut.Ellipse(Mm(20_000), Mm(10)), "length");
        Errors.Refused(static () => OvalPatch.Smallest(CutOut.Circle(Mm(10)), Mm(-1)), "margin");
        Errors.Refused(static () => OvalPatch.Smallest(CutOut.Circle(Mm(10)), Mm(1), Mm(0)), "step");
        Errors.Refused(static () => new OvalPatch(CutOut.Circle(Mm(10)), Mm(0), Mm(5)), "length");
    }

    // The edge of the patch in small steps, the distance of each point to the cut-out by plain geometry.
    private static double Walked(CutOutCase given, double lengthMm, double widthMm)
    {
        const int Steps = 4000;
        double least = double.PositiveInfinity;
        (double X, double Y)[] rim = given.IsRectangle ? [] : [.. Enumerable.Range(0, Steps + 1).Select(i =>
        {
            double t = Math.PI / 2 * i / Steps;
            return (given.LengthMm / 2 * Math.Cos(t), given.WidthMm / 2 * Math.Sin(t));
        })];
        int near = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double t = Math.PI / 2 * i / Steps;
            double x = lengthMm / 2 * Math.Cos(t);
            double y = widthMm / 2 * Math.Sin(t);
            if (given.IsRectangle)
            {
                double dx = Math.Max(0, x - (given.LengthMm / 2));
                double dy = Math.Max(0, y - (given.WidthMm / 2));
                least = Math.Min(least, Math.Sqrt((dx * dx) + (dy * dy)));
                continue;
            }

            // The nearest point of the rim moves on with the point on the edge.
            double Distance(int at) => Math.Sqrt(Math.Pow(rim[at].X - x, 2) + Math.Pow(rim[at].Y - y, 2));
            while (near < Steps && Distance(near + 1) <= Distance(near))
            {
                near++;
            }

            // Between the points of the rim, the chord: far closer to the rim than the points are to each other.
            least = Math.Min(least, Math.Min(ToChord((x, y), rim[Math.Max(0, near - 1)], rim[near]), ToChord((x, y), rim[near], rim[Math.Min(Steps, near + 1)])));
        }

        return least;
    }

    private static double ToChord((double X, double Y) point, (double X, double Y) from, (double X, double Y) to)
    {
        (double dx, double dy) = (to.X - from.X, to.Y - from.Y);
        double length = (dx * dx) + (dy * dy);
        double share = length == 0 ? 0 : Math.Clamp((((point.X - from.X) * dx) + ((point.Y - from.Y) * dy)) / length, 0, 1);
        return Math.Sqrt(Math.Pow(from.X + (share * dx) - point.X, 2) + Math.Pow(from.Y + (share * dy) - point.Y, 2));
    }
}
