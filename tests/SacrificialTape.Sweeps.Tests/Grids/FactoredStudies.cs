using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Grids;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Grids;

/// <summary>A grid worked out factor by factor is the grid worked out row by row, bit for bit, with the work that was declared.</summary>
public sealed class FactoredStudies
{
    private static readonly GridStage Rate = new(["temperature", "humidity", "sulfur", "chloride"], ["rate"], static (rows, answers) =>
        FirstYearRateRows.Zinc(rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], answers["rate"]));

    private static readonly GridStage Zinc = new(["foil", "layers"], ["zinc"], static (rows, answers) =>
    {
        Column foil = rows["foil"];
        Column layers = rows["layers"];
        Span<double> zinc = answers["zinc"];
        for (int i = 0; i < rows.Rows; i++)
        {
            zinc[i] = foil[i] * layers[i];
        }
    });

    private static readonly GridStage Life = new(["zinc", "rate", "exponent"], ["life"], static (rows, answers) =>
        LifeRows.PowerLaw(rows["zinc"], rows["rate"], rows["exponent"], answers["life"]));

    public static TheoryData<int, int, int, int> Shapes => new()
    {
        { 1, 1, 1, 1 }, { 7, 5, 3, 2 }, { 2, 3, 5, 7 }, { 40, 1, 1, 63 }, { 40, 1, 1, 64 }, { 3, 1, 2, 1500 }, { 1500, 2, 1, 3 }, { 11, 2, 65, 1 },
    };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Factor_by_factor_is_row_by_row_bit_for_bit_in_every_order(int climates, int exponents, int foils, int layers)
    {
        foreach (int[] order in new int[][] { [0, 1, 2, 3], [3, 2, 1, 0], [2, 0, 3, 1] })
        {
            FactoredStudy study = Of(climates, exponents, foils, layers, order);
            int rows = (int)study.Rows;
            AnswerBlock factored = study.Work(0, rows).Answers;
            AnswerBlock plain = study.WorkRowByRow(0, rows).Answers;
            foreach (string answer in study.Answers)
            {
                Assert.Equal(plain[answer].ToArray(), factored[answer].ToArray());
                Assert.DoesNotContain(double.NaN, plain[answer].ToArray());
            }

            int first = rows / 3;
            int some = rows - first - (rows / 7);
            AnswerBlock part = study.Work(first, some).Answers;
            Assert.Equal(plain["life"].Slice(first, some).ToArray(), part["life"].ToArray());
            Assert.Equal(plain["zinc"].Slice(first, some).ToArray(), part["zinc"].ToArray());
        }
    }

    // Which row is which: the last factor changes from row to row, as in a full grid of plain inputs.
    [Fact]
    public void Rows_are_those_of_a_full_grid()
    {
        SweepInput one = new("a", "", new ListedValues(1, 2, 3));
        SweepInput two = new("b", "", new RangedValues(10, 40, 4));
        SweepInput three = new("c", "", new ListedValues(0.1, 0.2));
        SweepBlock grid = new GridDesign().Make(new SweepInputs([one, two, three]), 0, 24);
        var study = new FactoredStudy(
            [new GridFactor(one), new GridFactor(two), new GridFactor(three)],
            [new(["a", "b", "c"], ["sum"], static (rows, answers) =>
            {
                for (int i = 0; i < rows.Rows; i++)
                {
                    answers["sum"][i] = rows["a"][i] + rows["b"][i] + rows["c"][i];
                }
            })]);
        StudyRows all = study.Work(0, 24);
        Assert.All(new[] { "a", "b", "c" }, name => Assert.Equal(grid[name].ToArray(), all.Inputs[name].ToArray()));
        Assert.Equal(grid["c"].Slice(5, 9).ToArray(), study.Work(5, 9).Inputs["c"].ToArray());
        Assert.Equal((5, 9), (study.Work(5, 9).Inputs.FirstRow, study.Work(5, 9).Rows));
        Assert.All(Enumerable.Range(0, 24), row => Assert.Equal((row / 8, row / 2 % 4, row % 2), (study.LevelOf("a", row), study.LevelOf("b", row), study.LevelOf("c", row))));
        double[] sum = all.Answers["sum"].ToArray();
        Assert.All(Enumerable.Range(0, 24), i => Assert.Equal(grid["a"][i] + grid["b"][i] + grid["c"][i], sum[i]));
    }

    [Fact]
    public void A_stage_sees_each_combination_of_its_factors_once_and_no_more()
    {
        long seen = 0;
        long all = 0;
        long single = 0;
        GridFactor[] factors = [Climates(50), new(new SweepInput("zinc", "um", new RangedValues(20, 200, 200)))];
        var study = new FactoredStudy(
            factors,
            [
                new(["temperature", "humidity", "sulfur", "chloride"], ["rate"], (rows, answers) =>
                {
                    Interlocked.Add(ref seen, rows.Rows);
                    Rate.Model(rows, answers);
                }),
                new(["zinc", "rate"], ["life"], (rows, answers) =>
                {
                    Interlocked.Add(ref all, rows.Rows);
                    _ = rows["rate"].IsSingle ? Interlocked.Increment(ref single) : 0;
                    Assert.False(rows["zinc"].IsSingle);
                    LifeRows.PowerLaw(rows["zinc"], rows["rate"], 0.813, answers["life"]);
                }),
            ]);
        study.Run([new("life", new Moments())], threads: 2, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((50, 10_000), (seen, all));
        single = 0;
        _ = study.Work(0, 10_000);
        Assert.Equal(50, single);
        Assert.Equal((50, 20_000), (seen, all));
        _ = study.WorkRowByRow(0, 10_000);
        Assert.Equal((10_050, 30_000), (seen, all));
        Assert.Equal(["climate"], study.FactorsBehind("rate"));
        Assert.Equal(["climate", "zinc"], study.FactorsBehind("life"));
    }

    [Fact]
    public void Lives_are_those_of_the_one_pass_from_climate()
    {
        FactoredStudy study = Of(9, 1, 4, 30, [0, 1, 2, 3]);
        AnswerBlock answers = study.Work(0, (int)study.Rows).Answers;
        GridFactor climate = study.Factors[0];
        double[] life = new double[1];
        for (int row = 0; row < answers.Rows; row += 37)
        {
            int level = row / (4 * 30);
            LifeFromClimateRows.Zinc(
                climate.Column(0)[level], climate.Column(1)[level], climate.Column(2)[level], climate.Column(3)[level], answers["zinc"][row], 0.5, life);
            Assert.Equal(life[0], answers["life"][row]);
        }
    }

    [Fact]
    public void Threads_and_slices_change_no_bit()
    {
        FactoredStudy study = Of(13, 3, 5, 200, [0, 1, 2, 3]);
        string whole = Said(study, null, 1);
        Assert.Equal(whole, Said(study, null, 3));
        var joined = new Moments();
        var rates = new Moments();
        for (int slice = 6; slice >= 0; slice--)
        {
            study.Run([new("life", joined), new("rate", rates)], study.Slice(slice, 7), cancellation: TestContext.Current.CancellationToken);
        }

        Assert.Equal(whole, joined + "; " + rates);
    }

    [Fact]
    public void What_was_not_declared_cannot_be_read()
    {
        var study = new FactoredStudy(
            [Climates(3), new(new SweepInput("zinc", "um", new ListedValues(80, 100)))],
            [new(["temperature"], ["rate"], static (rows, answers) => rows["zinc"][0].Equals(answers["rate"][0]))]);
        Assert.Contains(
            "The stage that answers rate did not declare that it needs 'zinc', only 'temperature'",
            Assert.Throws<ArgumentException>("name", () => study.Work(0, 1)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        GridFactor zinc = new(new SweepInput("zinc", "um", new ListedValues(80, 100)));
        GridStage stage = new(["zinc"], ["twice"], static (_, _) => { });
        Assert.Contains("has none: list its values", Assert.Throws<ArgumentException>(
            "inputs", static () => new GridFactor(new SweepInput("zinc", "um", new NormalValues(80, 2)))).Message, StringComparison.Ordinal);
        Assert.Contains("'a' has 2 levels and 'b' 3", Assert.Throws<ArgumentException>(
            "inputs", static () => new GridFactor("both", [new("a", "", new ListedValues(1, 2)), new("b", "", new ListedValues(1, 2, 3))])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("inputs", static () => new GridFactor("none", []));
        Assert.Contains("has none: list its values, or state a range with its number of levels", Assert.Throws<ArgumentException>(
            "inputs", static () => new GridFactor(new SweepInput("zinc", "um", new RangedValues(80, 100)))).Message, StringComparison.Ordinal);
        foreach (string[] names in new string[][] { [], ["thin"], ["thin", "thin"], ["thin", " "], ["thin", "thick", "thicker"] })
        {
            Assert.Contains("As many names as levels, 2", Assert.Throws<ArgumentException>("levelNames", () => new GridFactor("zinc", zinc.Inputs, names)).Message, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentException>("factors", () => new FactoredStudy([zinc, zinc], [stage]));
        Assert.Throws<ArgumentException>("factors", () => new FactoredStudy([], [stage]));
        Assert.Throws<ArgumentException>("stages", () => new FactoredStudy([zinc], []));
        Assert.Contains("needs 'life', which is no input and no answer of a stage before it", Assert.Throws<ArgumentException>(
            "stages", () => new FactoredStudy([zinc], [new(["life"], ["twice"], static (_, _) => { }), new(["zinc"], ["life"], static (_, _) => { })])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("stages", () => new FactoredStudy([zinc], [stage, stage]));
        Assert.Throws<ArgumentException>("needs", static () => new GridStage([], ["a"], static (_, _) => { }));
        Assert.Throws<ArgumentException>("answers", static () => new GridStage(["a"], ["b", "b"], static (_, _) => { }));
        var study = new FactoredStudy([zinc], [stage]);
        Assert.Throws<ArgumentOutOfRangeException>("rows", () => study.Work(1, 2));
        Assert.Throws<ArgumentOutOfRangeException>("firstRow", () => study.Work(3, 0));
        Assert.Throws<ArgumentOutOfRangeException>("slice", () => study.Slice(2, 2));
        Assert.Throws<ArgumentException>("slice", () => study.Run([], new SweepSlice(1, 2), cancellation: TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentException>("answer", () => study.FactorsBehind("life"));
        Assert.Throws<ArgumentException>("factor", () => study.LevelOf("foil", 0));
        Assert.Throws<ArgumentOutOfRangeException>("firstRow", () => study.LevelOf("zinc", -1));
        Assert.Throws<ArgumentOutOfRangeException>("threads", () => study.Run([], threads: 0, cancellation: TestContext.Current.CancellationToken));
        Assert.Contains("more rows than can be counted", Assert.Throws<ArgumentException>("factors", () => new FactoredStudy(
            Enumerable.Range(0, 5).Select(static i => new GridFactor(new SweepInput("x" + i, "", new RangedValues(0, 1, 100_000)))),
            [new(["x0"], ["y"], static (_, _) => { })])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_stage_leaves_out_is_not_a_number()
    {
        var study = new FactoredStudy(
            [Climates(3), new(new SweepInput("zinc", "um", new ListedValues(80, 100)))], [new(["zinc"], ["one", "two"], static (rows, answers) => answers["one"].Fill(1))]);
        AnswerBlock block = study.Work(0, 6).Answers;
        Assert.All(block["two"].ToArray(), static one => Assert.True(double.IsNaN(one)));
        Assert.All(block["one"].ToArray(), static one => Assert.Equal(1, one));
    }

    [Fact]
    public void A_table_has_headings_with_units_and_names_of_levels()
    {
        var study = new FactoredStudy(
            [
                new("place", [new("rate", "um/a", new ListedValues(2, 4))], ["town", "coast"]),
                new(new SweepInput("zinc", "um", new ListedValues(50, 100, 1250))),
            ],
            [new(["zinc", "rate"], ["life"], static (rows, answers) => LifeRows.Linear(rows["zinc"], rows["rate"], answers["life"]))]);
        const string Expected = """
            place  rate [um/a]  zinc [um]  life [a]
            town             2        100        50
            town             2       1250       625
            coast            4         50      12.5
            """;
        StudyRows some = study.Work(1, 3);
        Assert.Equal(Expected.ReplaceLineEndings("\n"), some.ToTable(new Dictionary<string, string> { ["life"] = "a" }));
        Assert.Equal(Expected.ReplaceLineEndings("\n").Replace("life [a]", "life", StringComparison.Ordinal).Split('\n').Length, some.ToString().Split('\n').Length);
        Assert.Throws<ArgumentException>("answerUnits", () => some.ToTable(new Dictionary<string, string> { ["lives"] = "a" }));
        Assert.Equal(["town", "coast"], study.Factors[0].LevelNames);
    }

    [Fact]
    public void A_long_table_says_how_many_rows_it_does_not_show()
    {
        StudyRows all = Of(5, 1, 5, 4, [0, 1, 2, 3]).Work(0, 100);
        string[] lines = all.ToString().Split('\n');
        Assert.Equal((22, "... and 80 more rows"), (lines.Length, lines[^1]));
        Assert.Equal(101, all.ToTable().Split('\n').Length);
        Assert.Equal(lines[..20].Select(static line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^1]), all.ToTable().Split('\n')[..20].Select(static line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^1]));
    }

    private static string Said(FactoredStudy study, SweepSlice? slice, int threads)
    {
        var life = new Moments();
        var rate = new Moments();
        study.Run([new("life", life), new("rate", rate)], slice, threads, TestContext.Current.CancellationToken);
        Assert.Equal(study.Rows, life.Count);
        return life + "; " + rate;
    }

    private static GridFactor Climates(int count) => new("climate",
    [
        new("temperature", "degC", Listed(count, 1, -10, 25)),
        new("humidity", "%", Listed(count, 2, 40, 90)),
        new("sulfur", "mg/(m2.d)", Listed(count, 3, 1, 120)),
        new("chloride", "mg/(m2.d)", Listed(count, 4, 1, 700)),
    ]);

    private static FactoredStudy Of(int climates, int exponents, int foils, int layers, int[] order)
    {
        GridFactor[] factors =
        [
            Climates(climates),
            new(new SweepInput("exponent", "", Listed(exponents, 5, 0.5, 0.5 + (0.1 * (exponents - 1))))),
            new(new SweepInput("foil", "um", Listed(foils, 6, 20, 100))),
            new(new SweepInput("layers", "", new ListedValues([.. Enumerable.Range(1, layers).Select(static one => (double)one)]))),
        ];
        return new FactoredStudy(order.Select(i => factors[i]), [Rate, Zinc, Life]);
    }

    private static ListedValues Listed(int count, int which, double low, double high) =>
        new([.. Enumerable.Range(1, count).Select(i => low + ((high - low) * (((i + (which * 17)) * 0.6180339887498949) % 1)))]);
}
