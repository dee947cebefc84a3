using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>Inputs one at a time, in the order of their swings.</summary>
public sealed class Tornados
{
    private static readonly SweepInputs Three = new(
        [new("small", "", new UniformValues(0, 1)), new("none", "", new FixedValue(4)), new("large", "", new UniformValues(-10, 10)), new("middle", "", new NormalValues(2, 1))],
        [new InputCorrelation("large", "middle", 0.5)]);

    // By hand: 0.1 and 0.9 of the even distributions, and 2 -+ 1.2815515655446 of the normal one (printed tables).
    [Fact]
    public void Of_a_sum_each_swing_is_known()
    {
        var tornado = new Tornado(Study(static x => x[0] + x[1] - (2 * x[2]) + (3 * x[3])), "sum");
        Assert.Equal(["large", "middle", "small", "none"], tornado.Bars.Select(static bar => bar.Input));
        Assert.Equal(0.5 + 4 + 6, tornado.Middle, 1e-12);
        double[] expected = [32, 2 * 3 * 1.2815515655446004, 0.8, 0];
        Assert.All(Enumerable.Range(0, 4), i => Assert.Equal(expected[i], tornado.Bars[i].Swing, 1e-12));
        Assert.Equal((-8.0, 8.0), (Math.Round(tornado.Bars[0].LowValue, 12), Math.Round(tornado.Bars[0].HighValue, 12)));
        Assert.True(tornado.Bars[0].AtLow > tornado.Bars[0].AtHigh && tornado.Bars[1].AtLow < tornado.Bars[1].AtHigh);
    }

    [Fact]
    public void Its_text_draws_the_bars()
    {
        string[] lines = new Tornado(Study(static x => x[0] + x[1] - (2 * x[2]) + (3 * x[3])), "sum").ToString().Split('\n');
        Assert.Equal("sum 10.5 with all inputs at their medians; each at 10 % and 90 %", lines[0]);
        Assert.Equal("large  ####################|#################### 26.5 at -8, -5.5 at 8", lines[1]);
        Assert.Equal("none                       |                     10.5 at 4, 10.5 at 4", lines[4]);
        Assert.Equal(5, lines.Length);
        Assert.True(lines[2].Count(static one => one == '#') > lines[3].Count(static one => one == '#'));
    }

    [Fact]
    public void An_answer_that_is_none_comes_last_and_equal_swings_stay_in_order()
    {
        var tornado = new Tornado(Study(static x => x[2] > 7 ? double.NaN : x[0] - x[3]), "sum");
        Assert.Equal("large", tornado.Bars[^1].Input);
        Assert.True(double.IsNaN(tornado.Bars[^1].Swing));
        var flat = new Tornado(Study(static _ => 1), "sum");
        Assert.Equal(["small", "none", "large", "middle"], flat.Bars.Select(static bar => bar.Input));
        Assert.Contains("none", flat.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Other_shares_give_other_bars_and_bad_ones_are_refused()
    {
        Study study = Study(static x => x[2]);
        Assert.Equal(10, new Tornado(study, "sum", 0.25, 0.75).Bars[0].Swing, 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>("lowShare", () => new Tornado(study, "sum", 0.9, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>("lowShare", () => new Tornado(study, "sum", 0, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>("lowShare", () => new Tornado(study, "sum", 0.5, 1));
        Assert.Throws<ArgumentException>("name", () => new Tornado(study, "life"));
    }

    private static Study Study(Func<double[], double> model) => new(Three, new RandomDesign(1, 10), ["sum"], (rows, answers) =>
    {
        for (int row = 0; row < rows.Rows; row++)
        {
            answers["sum"][row] = model([rows[0][row], rows[1][row], rows[2][row], rows[3][row]]);
        }
    });
}
