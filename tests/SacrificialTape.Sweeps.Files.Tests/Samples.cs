using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>Small studies, some rows of which are no number or unlimited.</summary>
internal static class Samples
{
    internal static readonly Dictionary<string, string> Units = new() { ["rate"] = "um/a", ["life, mean"] = "a" };

    internal static StudyTable Table(ulong seed = 7, long rows = 5003, string model = "sample 1", double hottest = 33, int sliceRows = 1000, int pause = 0) =>
        new(Study(seed, rows, hottest, pause), model, Units, sliceRows);

    internal static Study Study(ulong seed = 7, long rows = 5003, double hottest = 33, int pause = 0)
    {
        var inputs = new SweepInputs(
            [
                // Beyond 30 degC the function has no data: such rows are NaN.
                new("temperature", "degC", new UniformValues(5, hottest)),
                new("humidity", "%", new TriangularValues(60, 76, 92)),
                new("chloride \"Cl\"", "mg/(m2.d)", new LogNormalValues(60, 0.4)),
                new("zinc", "um", new ListedValues(0, 80, 100)),
                new("class [1]", string.Empty, new FixedValue(4)),
            ],
            [new("temperature", "humidity", -0.4)]);
        return new Study(inputs, new LatinHypercubeDesign(seed, rows), ["rate", "life, mean"], (block, answers) =>
        {
            // Not for the single rows that the fingerprint looks at.
            if (pause > 0 && block.Rows > 1)
            {
                Thread.Sleep(pause);
            }

            FirstYearRateRows.Zinc(block["temperature"], block["humidity"], 6, block["chloride \"Cl\""], answers["rate"]);
            LifeRows.Linear(block["zinc"], answers["rate"], answers["life, mean"]);

            // Every third row of no zinc at all is made one of no corrosion, for an infinity in the files.
            Span<double> life = answers["life, mean"];
            for (int row = 0; row < life.Length; row++)
            {
                life[row] = life[row] == 0 && (block.FirstRow + row) % 3 == 0 ? double.PositiveInfinity : life[row];
            }
        });
    }

    internal static AnswerSummary[] Kept() =>
    [
        new("rate", new Moments()),
        new("life, mean", new Moments()),
        new("life, mean", new Histogram(1, 200, 50, RangeSpacing.Logarithmic)),
        new("life, mean", new Exceedance(10, 20, 40)),
    ];

    /// <summary>The whole study in memory, column by column.</summary>
    internal static double[][] Columns(Study study)
    {
        StudyRows all = study.Work(0, (int)study.Rows);
        return [.. Enumerable.Range(0, study.Inputs.Count).Select(i => all.Inputs[i].ToArray()),
            .. Enumerable.Range(0, study.Answers.Count).Select(i => all.Answers[i].ToArray())];
    }

    internal static long[] Bits(IEnumerable<double> numbers) =>
        [.. numbers.Select(static number => double.IsNaN(number) ? -1 : BitConverter.DoubleToInt64Bits(number))];
}
