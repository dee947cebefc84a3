using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.TakeOff;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 100)]
public sealed class Charts
{
    private static readonly PipeSize[] Sizes = [.. new[] { "1/2", "1", "2", "4", "8", "16", "36" }.Select(static nps => PipeSize.FromNps(nps))];
    private static readonly StripStock[] Stocks = [Stock(150), Stock(25), Stock(50), Stock(100)];

    [Fact]
    public void A_long_pipe_takes_what_the_chart_says_for_each_metre()
    {
        foreach (ChartCell cell in Chart(20).Rows.SelectMany(static row => row.Cells))
        {
            // The ends, which the chart leaves out, are the same on both pipes and fall out of the difference.
            var choices = LayChoices.FromRules(RuleSet.Default);
            double longer = new SpiralLay(new StraightPipe(cell.Size, Length.FromMeters(300)), cell.Stock, cell.Geometry.Setting, null, choices).Strips[0].Length.Meters;
            double shorter = new SpiralLay(new StraightPipe(cell.Size, Length.FromMeters(100)), cell.Stock, cell.Geometry.Setting, null, choices).Strips[0].Length.Meters;
            Near.Equal((longer - shorter) / 200, cell.StripPerMeter.Meters, 1e-7);
            Near.Equal(cell.Stock.RollLength.Meters, cell.PipePerRoll.Meters * cell.StripPerMeter.Meters, 1e-12);
            Near.Equal(cell.StripPerMeter.Meters * cell.Stock.Width.Meters * 1e-4 * 7140, cell.ZincPerMeter.Kilograms, 1e-12);
        }
    }

    [Fact]
    public void The_strip_to_take_is_the_widest_that_keeps_every_rule()
    {
        foreach (ChartRow row in Chart(20).Rows)
        {
            double[] good = [.. row.Cells.Where(static cell => !cell.Geometry.Broken() && cell.LayersEverywhere > 0).Select(static cell => cell.Stock.Width.Millimeters)];
            Assert.Equal(good.Length == 0 ? null : good.Max(), row.Recommended?.Stock.Width.Millimeters);
        }
    }

    [Fact]
    public void A_strip_that_does_not_go_round_is_left_out_and_said_why()
    {
        ConsumptionChart chart = ConsumptionChart.Of([PipeSize.FromNps("1/2"), PipeSize.FromNps("16")], [Stock(150)], SpiralSetting.FromTrueLap(Mm(10)));
        Assert.Empty(chart.Rows[0].Cells);
        Assert.Null(chart.Rows[0].Recommended);
        Assert.Equal("no stocked strip goes round this pipe at this setting", chart.Rows[0].Why);
        Assert.Equal("150 mm: the widest stocked, fewest turns", chart.Rows[1].Why);
    }

    [Fact]
    public void Why_names_the_rule_that_a_wider_strip_breaks() => Assert.Equal(
        "50 mm: the widest that keeps every rule; 100 mm breaks lay.spiral-angle.maximum",
        Chart(10).Rows.Single(static row => row.Size.Nps == "1 1/4" || row.Size.Nps == "1").Why);

    [Fact]
    public void The_text_has_a_line_for_each_cell_and_a_header()
    {
        ConsumptionChart chart = Chart(20);
        string[] lines = chart.ToCsv().TrimEnd('\n').Split('\n');
        Assert.Equal(1 + chart.Rows.Sum(static row => row.Cells.Count), lines.Length);
        int columns = lines[0].Split(',').Length;
        Assert.All(lines, line => Assert.Equal(columns, line.Split(',').Length));
        Assert.Equal(chart.Rows.Count(static row => row.Recommended is not null), lines.Count(static line => line.EndsWith(",yes", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_chart_of_nothing_is_refused()
    {
        Assert.Equal("sizes", Assert.Throws<ArgumentException>(static () => ConsumptionChart.Of([], Stocks, SpiralSetting.FromTrueLap(Mm(10)))).ParamName);
        Assert.Equal("stocks", Assert.Throws<ArgumentException>(static () => ConsumptionChart.Of(Sizes, [], SpiralSetting.FromTrueLap(Mm(10)))).ParamName);
        Assert.Throws<InvalidOperationException>(static () => ConsumptionChart.Of(Sizes, Stocks, default));
    }

    private static ConsumptionChart Chart(double lapMm) => ConsumptionChart.Of(Sizes, Stocks, SpiralSetting.FromTrueLap(Mm(lapMm)));
}
