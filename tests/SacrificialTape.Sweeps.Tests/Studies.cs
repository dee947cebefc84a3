using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Sampling;
using UnitsNet;

namespace SacrificialTape.Sweeps.Tests;

/// <summary>Slices joined are the whole, threads change nothing, a row is the typed answer.</summary>
public sealed class Studies
{
    private static readonly SweepInputs Site = new(
        [
            new("temperature", "degC", new TruncatedValues(new NormalValues(11, 3), -17, 28)),
            new("humidity", "%", new TriangularValues(60, 76, 92)),
            new("sulfur", "mg/(m2.d)", new LogNormalValues(8, 0.4)),
            new("chloride", "mg/(m2.d)", new RangedValues(3, 300, 4, RangeSpacing.Logarithmic)),
            new("zinc", "um", new ListedValues(50, 80, 100)),
        ],
        [new("temperature", "humidity", -0.4)]);

    public static TheoryData<string> Designs => ["random", "hypercube", "sobol", "pick", "morris"];

    [Theory]
    [MemberData(nameof(Designs))]
    public void The_number_of_threads_changes_no_bit(string name)
    {
        Study study = Of(name);
        string[] one = Said(study, threads: 1);
        Assert.Equal(one, Said(study, threads: 2));
        Assert.Equal(one, Said(study, threads: 7));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Slices_joined_in_any_order_are_the_whole_bit_for_bit(string name)
    {
        Study study = Of(name);
        string[] whole = Said(study, threads: 2);
        foreach (int slices in new[] { 2, 5, 13 })
        {
            AnswerSummary[] kept = Kept(study);
            long rows = 0;
            for (int slice = slices - 1; slice >= 0; slice--)
            {
                SweepSlice part = study.Slice(slice, slices);
                rows += part.Rows;
                AnswerSummary[] own = Kept(study);
                study.Run(own, part, cancellation: TestContext.Current.CancellationToken);
                for (int i = 0; i < kept.Length; i++)
                {
                    kept[i].Summary.Join(own[i].Summary);
                }
            }

            Assert.Equal(study.Rows, rows);
            Assert.Equal(whole, Said(kept));
        }
    }

    [Fact]
    public void A_row_is_what_the_typed_form_answers()
    {
        Study study = Of("sobol");
        StudyRows rows = study.Work(100, 200);
        for (int row = 0; row < 200; row++)
        {
            var air = new AnnualAtmosphere(
                Temperature.FromDegreesCelsius(rows.Inputs["temperature"][row]),
                RelativeHumidity.FromPercent(rows.Inputs["humidity"][row]),
                DepositionRate.FromMilligramsPerSquareMeterDay(rows.Inputs["sulfur"][row]),
                DepositionRate.FromMilligramsPerSquareMeterDay(rows.Inputs["chloride"][row]));
            CorrosionRate rate = new DoseResponse(Metal.Zinc, air).Rate;
            double years = PowerLawLoss.ZincMean.TimeToLoss(rate, Length.FromMicrometers(rows.Inputs["zinc"][row])).Years;
            Ulps.AtMost(16, rate.MicrometersPerYear, rows.Answers["rate"][row], "rate");
            Ulps.AtMost(40, years, rows.Answers["life"][row], "life");
        }
    }

    [Fact]
    public void What_a_model_leaves_out_is_not_a_number()
    {
        var study = new Study(Site, new RandomDesign(1, 10), ["one", "two"], static (rows, answers) => rows["zinc"].CopyTo(answers["one"]));
        var moments = new Moments();
        study.Run([new("two", moments)], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((0, 10), (moments.Count, moments.NotANumber));
    }

    [Fact]
    public void A_model_that_fails_says_so()
    {
        var study = new Study(Site, new RandomDesign(1, 5000), ["one"], static (_, _) => throw new InvalidOperationException("the model's own words"));
        Assert.Equal("the model's own words", Assert.Throws<InvalidOperationException>(() => study.Run(
            [new("one", new Moments())], threads: 3, cancellation: TestContext.Current.CancellationToken)).Message);
    }

    [Fact]
    public void Summarize_fills_a_summary_of_its_own_with_the_rows_of_a_run()
    {
        Study study = Of("random");
        var asked = new Moments();
        var run = new Moments();
        study.Run([new("life", run)], study.Slice(1, 3), cancellation: TestContext.Current.CancellationToken);
        Moments filled = study.Summarize("life", asked, study.Slice(1, 3), threads: 2, TestContext.Current.CancellationToken);
        Assert.Equal(run.Save(), filled.Save());
        Assert.Equal(0, asked.Count + asked.NotANumber);
        Assert.Throws<ArgumentException>("name", () => study.Summarize("years", asked, cancellation: TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Slices_and_what_is_kept_are_checked()
    {
        Assert.Throws<ArgumentOutOfRangeException>("firstRow", static () => new SweepSlice(-1, 2));
        Assert.Throws<ArgumentOutOfRangeException>("rows", static () => new SweepSlice(1, -2));
        Assert.Throws<ArgumentOutOfRangeException>("rows", static () => new SweepSlice(long.MaxValue, 1));
        Assert.Equal("7 rows from 3 on", new SweepSlice(3, 7).ToString());
        Assert.Throws<ArgumentException>("answer", static () => new AnswerSummary(" ", new Moments()));
        Assert.Throws<ArgumentNullException>("summary", static () => new AnswerSummary("life", null!));
    }

    [Fact]
    public void A_run_can_be_ended()
    {
        using var ended = new CancellationTokenSource();
        ended.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Of("random").Run([], cancellation: ended.Token));
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        Study study = Of("pick");
        Assert.Contains("No answer is named 'years'; there are 'rate', 'life'", Assert.Throws<ArgumentException>(
            () => study.Run([new("years", new Moments())], cancellation: TestContext.Current.CancellationToken)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("slice", () => study.Run([], new SweepSlice(1, 7), cancellation: TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentOutOfRangeException>("slice", () => study.Slice(3, 3));
        Assert.Throws<ArgumentOutOfRangeException>("threads", () => study.Run([], threads: 0, cancellation: TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentException>("answers", static () => new Study(Site, new RandomDesign(1, 5), [], Model));
        Assert.Contains("need independent inputs", Assert.Throws<ArgumentException>(
            static () => new Study(Site, new PickFreezeDesign(new RandomDesign(1, 5)), ["rate"], Model)).Message, StringComparison.Ordinal);
    }

    private static Study Of(string name)
    {
        var independent = new SweepInputs(Site.All);
        return name switch
        {
            "random" => new(Site, new RandomDesign(7, 5003), ["rate", "life"], Model),
            "hypercube" => new(Site, new LatinHypercubeDesign(7, 5003), ["rate", "life"], Model),
            "sobol" => new(Site, new SobolDesign(7, 4096), ["rate", "life"], Model),
            "pick" => new(independent, new PickFreezeDesign(new SobolDesign(7, 1024)), ["rate", "life"], Model),
            _ => new(independent, new MorrisDesign(7, 700), ["rate", "life"], Model),
        };
    }

    private static void Model(SweepBlock rows, AnswerBlock answers)
    {
        FirstYearRateRows.Zinc(rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], answers["rate"]);
        LifeRows.PowerLaw(rows["zinc"], answers["rate"], 0.813, answers["life"]);
    }

    private static AnswerSummary[] Kept(Study study)
    {
        var kept = new List<AnswerSummary>
        {
            new("rate", new Moments()), new("life", new Moments()), new("life", new Histogram(1, 200, 50)), new("life", new Exceedance(10, 20, 40)),
        };
        switch (study.Design)
        {
            case PickFreezeDesign pick:
                kept.Add(new("life", new SobolIndices(pick, study.Inputs)));
                break;
            case MorrisDesign morris:
                kept.Add(new("life", new MorrisScreening(morris, study.Inputs)));
                break;
            default:
                break;
        }

        return [.. kept];
    }

    private static string[] Said(Study study, int threads)
    {
        AnswerSummary[] kept = Kept(study);
        study.Run(kept, threads: threads, cancellation: TestContext.Current.CancellationToken);
        return Said(kept);
    }

    // Every figure to its last bit.
    private static string[] Said(AnswerSummary[] kept) => [.. kept.SelectMany(static one => one.Summary switch
    {
        Moments moments => new[] { moments.Count, moments.Mean, moments.Variance, moments.Least, moments.Greatest, moments.NotANumber },
        Histogram histogram => [histogram.BelowAll, histogram.AboveAll, .. histogram.Counts],
        Exceedance exceedance => [.. exceedance.Above],
        SobolIndices indices => [indices.Points, .. indices.FirstOrder, .. indices.Total],
        MorrisScreening screening => [.. screening.Mean, .. screening.MeanOfAbsolute, .. screening.Deviation],
        _ => [],
    }).Select(static value => value.ToString("R", System.Globalization.CultureInfo.InvariantCulture))];
}
