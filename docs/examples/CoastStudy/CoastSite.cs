using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Files;
using SacrificialTape.Sweeps.Sampling;

namespace CoastStudy;

/// <summary>
/// An invented site on a coast whose air is of category C4 in the middle of its spread, and an invented lot of foil. No number of
/// it was measured anywhere; the formulas are the library's, with the marks they have there.
/// </summary>
public static class CoastSite
{
    public const string Said = "Invented site and foil: no number of its inputs was measured anywhere.";

    /// <summary>Highest life that the curves show, a.</summary>
    public const int LastYear = 150;

    private static readonly Dictionary<string, string> Units = new() { ["rate"] = "um/a", ["life"] = "a" };

    /// <summary>Climate, how far the dose-response function may be off, the loss law and the foil.</summary>
    public static SweepInputs Inputs { get; } = new(
        [
            new("temperature", "degC", new TruncatedValues(new NormalValues(12, 1.2), 8, 16)),
            new("humidity", "%", new TriangularValues(72, 79, 86)),
            new("sulfur dioxide", "mg/(m2.d)", new LogNormalValues(8, 0.35)),
            new("chloride", "mg/(m2.d)", new TruncatedValues(new LogNormalValues(140, 0.5), 20, 300)),

            // -33 % to +50 % read as one standard deviation, as the core does.
            new("error of the rate", string.Empty, new LogNormalValues(1, Math.Log(1.5))),
            new("exponent", string.Empty, new TruncatedValues(new NormalValues(0.813, 0.030), 0.7, 0.95)),
            new("foil", "um", new TriangularValues(94, 100, 106)),
            new("usable share", string.Empty, new UniformValues(0.7, 0.9)),
        ]);

    /// <summary>Rows that fill the space evenly, for the distribution of rate and life.</summary>
    public static StudyTable Spread(long rows, ulong seed, int sliceRows = StudyTable.UsualSliceRows) => Table(new SobolDesign(seed, rows), sliceRows);

    /// <summary>Rows in points of ten, for the share of each input; their number follows that of the other study.</summary>
    public static StudyTable Sensitivity(long rows, ulong seed, int sliceRows = StudyTable.UsualSliceRows) => Table(SensitivityDesign(rows, seed), sliceRows);

    /// <summary>What is kept of the first study.</summary>
    public static AnswerSummary[] SpreadKept(double requiredYears)
    {
        // Exceedance counts what is more: just below a threshold it counts what is at least.
        double[] years = [.. Enumerable.Range(0, (LastYear / 2) + 1).Select(static i => Math.BitDecrement(2.0 * i))];
        return
        [
            new("rate", new Moments()),
            new("life", new Moments()),
            new("life", new Histogram(0, LastYear, LastYear * 4)),
            new("life", new Exceedance(years)),
            new("life", new Exceedance(Math.BitDecrement(requiredYears))),
        ];
    }

    /// <summary>What is kept of the second study.</summary>
    public static AnswerSummary[] SensitivityKept(long rows, ulong seed) => [new("life", new SobolIndices(SensitivityDesign(rows, seed), Inputs))];

    private static PickFreezeDesign SensitivityDesign(long rows, ulong seed)
    {
        // A power of two serves a Sobol sequence best; an eighth of the rows tells two digits of an index.
        long points = 1L << Math.Max(4, (int)Math.Log2(Math.Max(1, rows / 8.0 / (Inputs.Count + 2))));
        return new PickFreezeDesign(new SobolDesign(seed, points));
    }

    private static StudyTable Table(Design design, int sliceRows) =>
        new(new Study(Inputs, design, ["rate", "life"], Model), "coast site, version 1", Units, sliceRows);

    // By the power law with its tangent, of the zinc that may be used up. Where the air lies outside the data, the row has no answer.
    private static void Model(SweepBlock rows, AnswerBlock answers)
    {
        Span<double> rate = answers["rate"];
        FirstYearRateRows.Zinc(rows["temperature"], rows["humidity"], rows["sulfur dioxide"], rows["chloride"], rate);
        double[] zinc = new double[rows.Rows];
        ReadOnlySpan<double> off = rows["error of the rate"];
        ReadOnlySpan<double> foil = rows["foil"];
        ReadOnlySpan<double> usable = rows["usable share"];
        for (int row = 0; row < zinc.Length; row++)
        {
            rate[row] *= off[row];
            zinc[row] = foil[row] * usable[row];
        }

        LifeRows.PowerLaw(zinc, rate, rows["exponent"], answers["life"]);
    }
}
