using SacrificialTape.Quantities;
using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Grids;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Snippets;

/// <summary>What docs/sweeps.md quotes.</summary>
public static class SweepsPage
{
    private static readonly SweepInputs Site = new(
        [
            new("temperature", "degC", new TruncatedValues(new NormalValues(11, 2), 5, 17)),
            new("humidity", "%", new TriangularValues(68, 76, 84)),
            new("sulfur", "mg/(m2.d)", new LogNormalValues(6, 0.3)),
            new("chloride", "mg/(m2.d)", new RangedValues(5, 120, 4, RangeSpacing.Logarithmic)),
            new("zinc", "um", new UniformValues(72, 88)),
        ]);

    public static void Columns()
    {
        #region columns
        double[] temperature = [8, 11, 14, 31];
        double[] rate = new double[4];
        double[] life = new double[4];
        FirstYearRateRows.Zinc(temperature, humidityPercent: 76, sulfurDioxideMgPerM2Day: 6, chlorideMgPerM2Day: 25, rateUmPerYear: rate);
        LifeRows.PowerLaw(zincUm: 80, firstYearUmPerYear: rate, timeExponent: 0.813, lifeYears: life);
        for (int row = 0; row < 4; row++)
        {
            Console.WriteLine(FormattableString.Invariant($"{temperature[row]} degC: {rate[row]:0.000} um/a, {life[row]:0.0} a"));
        }
        #endregion
    }

    public static void Uncertain()
    {
        #region uncertain
        var inputs = new SweepInputs(
            [
                new SweepInput("temperature", "degC", new TruncatedValues(new NormalValues(11, 2), 5, 17)),
                new SweepInput("humidity", "%", new TriangularValues(68, 76, 84)),
                new SweepInput("sulfur", "mg/(m2.d)", new LogNormalValues(6, 0.3)),
                new SweepInput("chloride", "mg/(m2.d)", new RangedValues(5, 120, spacing: RangeSpacing.Logarithmic)),
                new SweepInput("zinc", "um", new UniformValues(72, 88)),
            ],
            [new InputCorrelation("temperature", "humidity", -0.4)]);
        var study = new Study(inputs, new SobolDesign(seed: 1, rows: 16_384), ["rate", "life"], static (rows, answers) =>
        {
            FirstYearRateRows.Zinc(rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], answers["rate"]);
            LifeRows.PowerLaw(rows["zinc"], answers["rate"], 0.813, answers["life"]);
        });
        var moments = new Moments();
        var bins = new Histogram(1, 500, 2000, RangeSpacing.Logarithmic);
        var years = new Exceedance(50, 75, 100);
        study.Run([new("life", moments), new("life", bins), new("life", years)], threads: 2);
        Console.WriteLine(FormattableString.Invariant($"mean {moments.Mean:0.0} a, deviation {moments.Deviation:0.0} a"));
        Console.WriteLine(FormattableString.Invariant($"one in ten at or below {bins.Quantile(0.1).Middle:0} a"));
        Console.WriteLine(years);
        #endregion
    }

    public static void Sensitivity()
    {
        SweepInputs inputs = Site;
        #region sensitivity
        var points = new PickFreezeDesign(new SobolDesign(seed: 1, rows: 8192));
        var study = new Study(inputs, points, ["life"], static (rows, answers) =>
        {
            double[] rate = new double[rows.Rows];
            FirstYearRateRows.Zinc(rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], rate);
            LifeRows.PowerLaw(rows["zinc"], rate, 0.813, answers["life"]);
        });
        SobolIndices indices = study.Summarize("life", new SobolIndices(points, inputs));
        for (int i = 0; i < inputs.Count; i++)
        {
            Console.WriteLine(FormattableString.Invariant(
                $"{inputs.All[i].Name}: alone {indices.FirstOrder[i]:0.00}, in all {indices.Total[i]:0.00}"));
        }
        #endregion
    }

    public static void Intervals()
    {
        SweepInputs inputs = Site;
        #region intervals
        var points = new PickFreezeDesign(new RandomDesign(seed: 1, rows: 8192));
        var study = new Study(inputs, points, ["life"], static (rows, answers) =>
            LifeFromClimateRows.Zinc(
                rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], rows["zinc"], 0.813, answers["life"]));
        SobolIndices indices = study.Summarize("life", new SobolIndices(points, inputs));
        ValueList<ConfidenceInterval> inAll = indices.TotalIntervals(confidence: 0.95);
        for (int i = 0; i < inputs.Count; i++)
        {
            Console.WriteLine(FormattableString.Invariant($"{inputs.All[i].Name}: in all {indices.Total[i]:0.00}, {inAll[i].Low:0.00} to {inAll[i].High:0.00}"));
        }
        #endregion
    }

    public static void Tornado()
    {
        SweepInputs inputs = Site;
        #region tornado
        var study = new Study(inputs, new RandomDesign(seed: 1, rows: 1), ["life"], static (rows, answers) =>
            LifeFromClimateRows.Zinc(
                rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], rows["zinc"], 0.813, answers["life"]));
        Console.WriteLine(new Tornado(study, "life", lowShare: 0.05, highShare: 0.95));
        #endregion
    }

    public static void Front()
    {
        #region front
        var inputs = new SweepInputs(
        [
            new SweepInput("foil", "um", new ListedValues(50, 80, 100)),
            new SweepInput("layers", "", new ListedValues(1, 2, 3)),
        ]);
        var study = new Study(inputs, new GridDesign(), ["cost", "life"], static (rows, answers) =>
        {
            double[] zinc = new double[rows.Rows];
            for (int row = 0; row < rows.Rows; row++)
            {
                zinc[row] = rows["foil"][row] * rows["layers"][row];
                answers["cost"][row] = rows["layers"][row] * (14 + (0.2 * rows["foil"][row]));
            }

            LifeRows.PowerLaw(zinc, 2.1, 0.813, answers["life"]);
        });
        var front = new TradeOffFront(lowCost: 10, highCost: 200, bins: 300);
        front.Add(study, "cost", "life");
        SweepBlock all = study.Work(0, 9).Inputs;
        foreach (FrontPoint point in front.Points)
        {
            Console.WriteLine(FormattableString.Invariant(
                $"{all["layers"][(int)point.Row]} x {all["foil"][(int)point.Row]} um: cost {point.Cost:0}, {point.Life:0} a"));
        }
        #endregion
    }

    public static void Threshold()
    {
        #region threshold
        var inputs = new SweepInputs([new SweepInput("rate", "um/a", new LogNormalValues(2.1, 0.35))]);
        var search = new ThresholdSearch(inputs, new RandomDesign(seed: 1, rows: 100_000), static (foil, rows, lives) =>
            LifeRows.Linear(foil, rows["rate"], lives));
        LeastValue foil = search.Find(requirement: 25, probability: 0.9, low: 1, high: 1000);
        Console.WriteLine(FormattableString.Invariant($"{foil.Value:0.0} um; with 95 % confidence {foil.Interval.Low:0.0} to {foil.Interval.High:0.0} um"));
        Console.WriteLine(FormattableString.Invariant($"closed form {25 * 2.1 * Math.Exp(0.35 * 1.2815516):0.0} um"));
        #endregion
    }

    public static void Factored()
    {
        #region factored
        var climate = new GridFactor("climate",
        [
            new SweepInput("temperature", "degC", new ListedValues(8, 14)),
            new SweepInput("humidity", "%", new ListedValues(76, 82)),
            new SweepInput("sulfur", "mg/(m2.d)", new ListedValues(6, 11)),
            new SweepInput("chloride", "mg/(m2.d)", new ListedValues(25, 40)),
        ]);
        var tape = new GridFactor(new SweepInput("zinc", "um", new ListedValues(50, 80, 100)));
        int worked = 0;
        var study = new FactoredStudy(
            [climate, tape],
            [
                new GridStage(["temperature", "humidity", "sulfur", "chloride"], ["rate"], (rows, answers) =>
                {
                    worked += rows.Rows;
                    FirstYearRateRows.Zinc(rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], answers["rate"]);
                }),
                new GridStage(["zinc", "rate"], ["life"], static (rows, answers) =>
                    LifeRows.PowerLaw(rows["zinc"], rows["rate"], 0.813, answers["life"])),
            ]);
        var moments = new Moments();
        study.Run([new("life", moments)]);
        Console.WriteLine($"rate from {string.Join(" and ", study.FactorsBehind("rate"))}, life from {string.Join(" and ", study.FactorsBehind("life"))}");
        Console.WriteLine($"{moments.Count} lives from {worked} rates");
        Console.WriteLine(FormattableString.Invariant($"{moments.Least:0.0} to {moments.Greatest:0.0} a"));
        #endregion
    }

    public static void Table()
    {
        #region table
        var place = new GridFactor(
            "place",
            [
                new SweepInput("chloride", "mg/(m2.d)", new ListedValues(5, 25, 120)),
                new SweepInput("humidity", "%", new ListedValues(74, 76, 80)),
            ],
            ["inland", "town", "coast"]);
        var study = new FactoredStudy(
            [place, new GridFactor(new SweepInput("foil", "um", new ListedValues(80, 150)))],
            [
                new GridStage(["chloride", "humidity"], ["rate"], static (rows, answers) =>
                    FirstYearRateRows.Zinc(11, rows["humidity"], 6, rows["chloride"], answers["rate"])),
                new GridStage(["foil", "rate"], ["life"], static (rows, answers) =>
                {
                    double[] zinc = new double[rows.Rows];
                    for (int row = 0; row < rows.Rows; row++)
                    {
                        zinc[row] = 0.8 * rows["foil"][row];
                    }

                    LifeRows.PowerLaw(zinc, rows["rate"], 0.813, answers["life"]);
                }),
            ]);
        StudyRows rows = study.Work(0, (int)study.Rows);
        Console.WriteLine(rows.ToTable(new Dictionary<string, string> { ["rate"] = "um/a", ["life"] = "a" }));
        #endregion
    }

    public static void Correlated()
    {
        #region correlated
        SweepInput temperature = new("temperature", "degC", new TruncatedValues(new NormalValues(11, 2), 5, 17));
        SweepInput humidity = new("humidity", "%", new TriangularValues(68, 76, 84));
        SweepInput chloride = new("chloride", "mg/(m2.d)", new LogNormalValues(25, 0.5));
        SweepModel model = static (rows, answers) => LifeFromClimateRows.Zinc(
            rows["temperature"], rows["humidity"], 6, rows["chloride"], 80, 0.813, answers["life"]);

        // How lives are spread: warm years are dry ones.
        var together = new SweepInputs([temperature, humidity, chloride], [new InputCorrelation("temperature", "humidity", -0.4)]);
        Moments spread = new Study(together, new SobolDesign(seed: 1, rows: 16_384), ["life"], model).Summarize("life", new Moments());

        // Which input matters: the same inputs, each on its own.
        var apart = new SweepInputs(together.All);
        var points = new PickFreezeDesign(new SobolDesign(seed: 1, rows: 8192));
        SobolIndices shares = new Study(apart, points, ["life"], model).Summarize("life", new SobolIndices(points, apart));
        Console.WriteLine(FormattableString.Invariant($"mean {spread.Mean:0} a, deviation {spread.Deviation:0} a"));
        Console.WriteLine(shares);
        #endregion
    }

    public static void Slices()
    {
        SweepInputs inputs = Site;
        #region slices
        static void Model(SweepBlock rows, AnswerBlock answers) => LifeRows.Linear(rows["zinc"], 2.1, answers["life"]);
        var study = new Study(inputs, new LatinHypercubeDesign(seed: 7, rows: 10_000), ["life"], Model);
        var whole = new Moments();
        study.Run([new("life", whole)], threads: 4);
        var joined = new Moments();
        for (int slice = 2; slice >= 0; slice--)
        {
            var part = new Moments();
            study.Run([new("life", part)], study.Slice(slice, 3));
            joined.Join(part);
        }

        Console.WriteLine(joined.Mean == whole.Mean && joined.Variance == whole.Variance);
        #endregion
    }
}
