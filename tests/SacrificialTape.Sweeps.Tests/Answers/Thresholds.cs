using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>The least thickness of foil for a life with a probability, against a closed form.</summary>
public sealed class Thresholds
{
    // By the linear law a foil s lasts s/r years: with a log-normal rate it lasts L years with probability p from L m exp(sigma z) on,
    // m the median rate and z the normal quantile of p.
    private const double Median = 2.1;
    private const double LogDeviation = 0.35;
    private const double Years = 25;

    private static readonly SweepInputs Rate = new([new("rate", "um/a", new LogNormalValues(Median, LogDeviation))]);

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.99)]
    public void Of_a_log_normal_rate_and_a_linear_law_it_is_the_closed_form(double probability)
    {
        double expected = Years * Median * Math.Exp(LogDeviation * NormalKernel.Quantile(probability));
        LeastValue found = Search(new SobolDesign(3, 1 << 14)).Find(
            Years, probability, 1, 1000, relativeTolerance: 1e-8, threads: 2, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(expected, found.Value, 1e-3 * expected);
        Assert.True(found.Interval.Holds(expected) && found.Interval.Holds(found.Value));
        Assert.True(found.Value - found.Short <= 1e-8 * found.Value && found.Share >= probability);
        Assert.Equal((1 << 14, 0), (found.Rows, found.NotANumber));
    }

    // The thickness that each row needs, sorted: the least value is that of one of the rows.
    [Fact]
    public void The_bracket_holds_what_a_row_needs_exactly()
    {
        var design = new RandomDesign(11, 999);
        double[] needed = [.. design.Make(Rate, 0, 999)["rate"].ToArray().Select(static rate => Years * rate).Order()];
        foreach (double probability in new[] { 0.1, 0.5, 0.9, 0.999, 1.0 / 3 })
        {
            LeastValue found = Search(design).Find(Years, probability, 1, 1000, relativeTolerance: 1e-10, cancellation: TestContext.Current.CancellationToken);
            double exact = needed[(int)Math.Ceiling((probability * 999) - 1e-9) - 1];
            Assert.True(found.Short <= exact * (1 + 1e-14) && exact * (1 - 1e-14) <= found.Value, $"{probability}: {found.Short} to {found.Value}, exactly {exact}");
        }
    }

    // A law over fixed seeds: of 200 intervals of 90 % between 164 and 194 hold the truth with a chance of 99.9 %; the bounds are those
    // of whole rows, rounded outwards.
    [Fact]
    public void Its_interval_holds_the_truth_as_often_as_stated()
    {
        double expected = Years * Median * Math.Exp(LogDeviation * NormalKernel.Quantile(0.9));
        int held = 0;
        for (ulong seed = 0; seed < 200; seed++)
        {
            held += Search(new RandomDesign(seed, 600)).Find(
                Years, 0.9, 10, 400, 0.9, 1e-3, cancellation: TestContext.Current.CancellationToken).Interval.Holds(expected) ? 1 : 0;
        }

        Assert.InRange(held, 164, 194);
    }

    [Fact]
    public void By_the_power_law_the_thickness_found_lasts_in_that_share_of_rows()
    {
        var design = new RandomDesign(2, 4000);
        var search = new ThresholdSearch(Rate, design, static (foil, rows, answers) => LifeRows.PowerLaw(foil, rows["rate"], 0.813, answers));
        LeastValue found = search.Find(Years, 0.95, 1, 1000, cancellation: TestContext.Current.CancellationToken);
        double[] years = new double[4000];
        LifeRows.PowerLaw(found.Value, design.Make(Rate, 0, 4000)["rate"], 0.813, years);
        Assert.Equal(found.Share, years.Count(static one => one >= Years) / 4000.0);
        Assert.True(found.Share >= 0.95);
        LifeRows.PowerLaw(found.Short, design.Make(Rate, 0, 4000)["rate"], 0.813, years);
        Assert.True(years.Count(static one => one >= Years) < 0.95 * 4000);
        Assert.Equal(found, search.Find(Years, 0.95, 1, 1000, threads: 3, cancellation: TestContext.Current.CancellationToken));
    }

    [Fact]
    public void What_rows_do_not_tell_is_infinite()
    {
        LeastValue few = Search(new RandomDesign(1, 20)).Find(Years, 0.95, 1, 1000, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(double.PositiveInfinity, few.Interval.High);
        Assert.True(double.IsFinite(few.Interval.Low));
    }

    [Fact]
    public void Rows_without_an_answer_fall_short_and_are_counted()
    {
        var search = new ThresholdSearch(Rate, new RandomDesign(1, 1000), static (foil, rows, answers) =>
        {
            LifeRows.Linear(foil, rows["rate"], answers);
            answers[0] = double.NaN;
        });
        LeastValue found = search.Find(Years, 0.9, 1, 1000, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(1, found.NotANumber);
        Assert.Throws<ArgumentOutOfRangeException>("high", () => search.Find(Years, 0.9999, 1, 1000, cancellation: TestContext.Current.CancellationToken));
    }

    [Fact]
    public void What_has_no_least_value_is_refused()
    {
        ThresholdSearch search = Search(new RandomDesign(1, 1000));
        CancellationToken token = TestContext.Current.CancellationToken;
        Assert.Contains("let higher values be tried", Assert.Throws<ArgumentOutOfRangeException>(
            "high", () => search.Find(Years, 0.9, 1, 20, cancellation: token)).Message, StringComparison.Ordinal);
        Assert.Contains("let lower values be tried", Assert.Throws<ArgumentOutOfRangeException>(
            "low", () => search.Find(Years, 0.9, 900, 1000, cancellation: token)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("probability", () => search.Find(Years, 1, 1, 1000, cancellation: token));
        Assert.Throws<ArgumentOutOfRangeException>("requirement", () => search.Find(double.NaN, 0.9, 1, 1000, cancellation: token));
        Assert.Throws<ArgumentOutOfRangeException>("low", () => search.Find(Years, 0.9, 0, 1000, cancellation: token));
        Assert.Throws<ArgumentOutOfRangeException>("confidence", () => search.Find(Years, 0.9, 1, 1000, 1, cancellation: token));
        Assert.Throws<ArgumentOutOfRangeException>("relativeTolerance", () => search.Find(Years, 0.9, 1, 1000, 0.9, 1e-15, cancellation: token));
        Assert.Throws<ArgumentOutOfRangeException>("threads", () => search.Find(Years, 0.9, 1, 1000, threads: 0, cancellation: token));
        var falling = new ThresholdSearch(Rate, new RandomDesign(1, 1000), static (foil, rows, answers) =>
            LifeRows.Linear(foil is > 200 and < 900 ? 1 : foil, rows["rate"], answers));
        Assert.Contains("must not fall as the value rises", Assert.Throws<InvalidOperationException>(
            () => falling.Find(Years, 0.9, 1, 1000, cancellation: token)).Message, StringComparison.Ordinal);
    }

    private static ThresholdSearch Search(Design design) =>
        new(Rate, design, static (foil, rows, answers) => LifeRows.Linear(foil, rows["rate"], answers));
}
