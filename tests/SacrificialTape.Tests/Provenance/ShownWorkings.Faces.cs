using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Lays on panels, corrugated sheet, shells, heads, flanges and measured areas.</content>
public sealed partial class ShownWorkings
{
    [Property(Arbitrary = [typeof(PanelCases)], MaxTest = 25)]
    public void Of_lays_on_panels(PanelCase given)
    {
        PanelLay lay = new(given.Panel(given.Seed % 3 != 0), Stock(given.StripMm, 1), given.Direction, Mm(given.LapMm), Choices(1.5, 15, 2));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.SideBySide, shown["n"], 0);
        Near.Equal(lay.LayersOnAverage.Ratio, shown["n_avg"], 1e-4);
        if (lay.SideBySide > 1)
        {
            Near.Equal(lay.Lap.Millimeters, shown["o_eq"], 1e-12);
            Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
        }

        double[] splices = [.. lay.ShowWorkings().Steps.Where(static step => step.Formula.Id == "face.splices").Select(static step => step.Result.Number)];
        Assert.Equal(lay.Splices, splices.Sum());
        PanelLayComparison both = PanelLay.BothWays(lay.Panel, lay.Stock, lay.LeastLap, lay.Choices);
        Near.Equal(both.AlongHeight.SideBySide, Checked(both)["n"], 0);
    }

    [Property(MaxTest = 25)]
    public void Of_lays_on_large_and_folded_steel(SpanCase given)
    {
        var sheet = new CorrugatedPanel(Mm(200), Mm(60), Mm(50), Mm(30), 6, Mm(given.SpanMm), Mm(75));
        foreach (CorrugatedDirection direction in Enum.GetValues<CorrugatedDirection>())
        {
            var folded = new CorrugatedLay(sheet, Stock(given.WidthMm), direction, Mm(given.LapMm), Choices(1.5, 15, 2));
            IReadOnlyDictionary<string, double> shown = Checked(folded);
            Near.Equal(folded.SideBySide, shown["n"], 0);
            Near.Equal(folded.DevelopedWidth.Millimeters, shown["U"], 1e-12);
            Near.Equal(folded.InsideCornersAlongFlutes, shown["j"], 0);
        }

        var shell = new Shell(Mm(400), Mm(given.SpanMm), ShellAxis.Upright, [ShellOpening.Rectangular(Mm(Math.Max(1, given.SpanMm / 3)), Mm(100))]);
        foreach (ShellDirection direction in Enum.GetValues<ShellDirection>())
        {
            var laid = new ShellLay(shell, Stock(given.WidthMm), direction, Mm(given.LapMm), Mm(given.WidthMm * 0.3), Choices(1.5, 15, 2));
            IReadOnlyDictionary<string, double> shown = Checked(laid);
            Near.Equal(laid.SideBySide, shown["n"], 0);
            double standsOver = direction == ShellDirection.Round && laid.SideBySide == 1 ? 400 * Math.PI * (1 - (shown["H"] / given.WidthMm)) : 0;
            Near.Equal(laid.Strips[0].Trim.Millimeters, shown["y"] + standsOver, 0, absolute: 0.0006);
        }

        var head = new FlatHeadLay(FlatHead.FromOutside(Mm(20 + given.SpanMm), Mm(given.WidthMm * 1.5)), Stock(given.WidthMm), Mm(given.LapMm), Choices());
        Near.Equal(head.RimRings, Checked(head)["n"], 0);
        var flange = new FlangeLay(
            new Flange(Mm(20 + given.SpanMm), Mm(30), Mm(10 + (given.SpanMm / 2)), Mm(10 + (given.SpanMm / 1.7)), 8, Mm(Math.Min(20, given.SpanMm / 40)), FlangeParts.Rim | FlangeParts.Front),
            Stock(given.WidthMm),
            Mm(given.LapMm),
            Choices());
        Near.Equal(flange.FrontStrips, Checked(flange)["n"], 0);
        var measured = new MeasuredAreaLay(
            new MeasuredArea(Area.FromSquareMeters(given.SpanMm), AreaAllowance.FromFraction(0.15), "paced out"), Stock(given.WidthMm), Mm(given.LapMm), Choices(1.5, 15, 2));
        Near.Equal(measured.LayersEverywhere, Checked(measured)["n_all"], 0);
    }
}
