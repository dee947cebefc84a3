using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Grids;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Benchmarks;

/// <summary>
/// Lives from climate over many rows, for the script <c>benchmarks/life-from-climate/run</c>: prints a name and a number a line.
/// Times are processor time in ns a row, since the machine may be shared; two threads against one is wall time.
/// </summary>
internal static class ClimateSpeed
{
    private const double Exponent = 0.813;

    internal static int Lives(int rows, int rounds, string file)
    {
        double[] celsius = Spread(rows, 1, -10, 25);
        double[] percent = Spread(rows, 2, 40, 90);
        double[] sulfur = Spread(rows, 3, 1, 120);
        double[] chloride = Spread(rows, 4, 1, 700);
        double[] zinc = Spread(rows, 5, 20, 200);
        double[] life = new double[rows];
        double[] other = new double[rows];

        void Columns() => LifeFromClimateRows.Zinc(celsius, percent, sulfur, chloride, zinc, Exponent, life);
        void Scalar()
        {
            var law = new PowerLawTerms(Exponent);
            for (int i = 0; i < rows; i++)
            {
                double rate = ExposureKernel.Zinc(celsius[i], percent[i], sulfur[i], chloride[i], default(NoSteps)).Rate;
                other[i] = LossKernel.PowerYears(zinc[i], rate, law, default(NoSteps));
            }
        }

        void Half(int first, int count) => LifeFromClimateRows.Zinc(
            celsius.AsSpan(first, count),
            percent.AsSpan(first, count),
            sulfur.AsSpan(first, count),
            chloride.AsSpan(first, count),
            zinc.AsSpan(first, count),
            Exponent,
            life.AsSpan(first, count));

        void Two()
        {
            var second = new Thread(() => Half(rows / 2, rows - (rows / 2)));
            second.Start();
            Half(0, rows / 2);
            second.Join();
        }

        Columns();
        Scalar();
        Two();
        Functions(sulfur, chloride, other);
        var columns = new List<double>();
        var scalar = new List<double>();
        var functions = new List<double>();
        var one = new List<double>();
        var two = new List<double>();
        var twoProcessor = new List<double>();
        for (int round = 0; round < rounds; round++)
        {
            functions.Add(Processor(() => Functions(sulfur, chloride, other), rows));
            scalar.Add(Processor(Scalar, rows));
            columns.Add(Processor(Columns, rows));
            one.Add(Wall(Columns, rows));
            two.Add(Wall(Two, rows));
            twoProcessor.Add(Processor(Two, rows));
        }

        double worst = 0;
        double within = 0;
        for (int i = 0; i < rows; i++)
        {
            worst = Math.Max(worst, Math.Abs(life[i] - other[i]) / other[i]);
            within += life[i] <= PowerLawTerms.KneeYears ? 1 : 0;
        }

        File.WriteAllBytes(file, MemoryMarshal.AsBytes(life.AsSpan()));
        Say("columns", Median(columns));
        Say("scalar", Median(scalar));
        Say("functions", Median(functions));
        Say("one-thread", Median(one));
        Say("two-threads", Median(two));
        Say("two-threads-processor", Median(twoProcessor));
        Say("within-share", within / rows);
        Say("scalar-difference", worst);
        return 0;
    }

    /// <summary>Lives of every climate with every tape, factor by factor and row by row.</summary>
    internal static int Grid(int climates, int tapes, int rounds, string file)
    {
        var study = new FactoredStudy(
            [
                new GridFactor("climate",
                [
                    new("temperature", "degC", new ListedValues(Spread(climates, 1, -10, 25))),
                    new("humidity", "%", new ListedValues(Spread(climates, 2, 40, 90))),
                    new("sulfur", "mg/(m2.d)", new ListedValues(Spread(climates, 3, 1, 120))),
                    new("chloride", "mg/(m2.d)", new ListedValues(Spread(climates, 4, 1, 700))),
                ]),
                new GridFactor(new SweepInput("zinc", "um", new ListedValues(Spread(tapes, 5, 20, 200)))),
            ],
            [
                new(["temperature", "humidity", "sulfur", "chloride"], ["rate"], static (rows, answers) =>
                    FirstYearRateRows.Zinc(rows["temperature"], rows["humidity"], rows["sulfur"], rows["chloride"], answers["rate"])),
                new(["zinc", "rate"], ["life"], static (rows, answers) =>
                    LifeRows.PowerLaw(rows["zinc"], rows["rate"], Exponent, answers["life"])),
            ]);
        int all = climates * tapes;
        AnswerBlock factored = study.Work(0, all).Answers;
        AnswerBlock plain = study.WorkRowByRow(0, all).Answers;
        if (!factored["life"].SequenceEqual(plain["life"]))
        {
            Console.Error.WriteLine("Factor by factor and row by row do not have the same bits.");
            return 1;
        }

        // Into the same memory each time: a block of a million rows costs more than its rows.
        var byFactor = new List<double>();
        var byRow = new List<double>();
        for (int round = 0; round < rounds; round++)
        {
            byFactor.Add(Processor(() => study.WorkInto(factored, 0, all), all));
            byRow.Add(Processor(() => study.WorkRowByRowInto(plain, 0, all), all));
        }

        File.WriteAllBytes(file, MemoryMarshal.AsBytes(factored["life"]));
        Say("grid-factored", Median(byFactor));
        Say("grid-row-by-row", Median(byRow));
        return 0;
    }

    /// <summary>A study of so many rows with summaries, and the most memory that the process ever had.</summary>
    internal static int Study(long rows)
    {
        var inputs = new SweepInputs(
        [
            new("temperature", "degC", new TruncatedValues(new NormalValues(11, 3), -17, 28)),
            new("humidity", "%", new TriangularValues(60, 76, 92)),
            new("sulfur", "mg/(m2.d)", new LogNormalValues(8, 0.4)),
            new("chloride", "mg/(m2.d)", new RangedValues(3, 300, spacing: RangeSpacing.Logarithmic)),
            new("zinc", "um", new UniformValues(70, 90)),
        ]);
        var study = new Study(inputs, new RandomDesign(1, rows), ["life"], static (all, answers) => LifeFromClimateRows.Zinc(
            all["temperature"], all["humidity"], all["sulfur"], all["chloride"], all["zinc"], Exponent, BeyondFit.AcceptWithFinding, answers["life"]));
        var moments = new Moments();
        long start = Stopwatch.GetTimestamp();
        TimeSpan before = Environment.CpuUsage.TotalTime;
        study.Run([new("life", moments), new("life", new Histogram(1, 1000, 2000, RangeSpacing.Logarithmic)), new("life", new Exceedance(50, 100))]);
        double processor = (Environment.CpuUsage.TotalTime - before).TotalNanoseconds / rows;
        using var self = Process.GetCurrentProcess();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"study {rows} rows: peak working set {self.PeakWorkingSet64 / 1048576.0:0.0} MB, {processor:0} ns of processor a row, {Stopwatch.GetElapsedTime(start).TotalSeconds:0.0} s, mean {moments.Mean:0.000} a"));
        return 0;
    }

    // The four functions that a first-year rate cannot do without, two logarithms and two exponentials, and nothing else but
    // reading two columns and writing one.
    private static void Functions(double[] one, double[] other, double[] answers) =>
        RowLoop.Run(new FiveColumns<FourFunctions>(one, other, 0, 0, 0, answers), answers.Length);

    private static double Processor(Action work, int rows)
    {
        TimeSpan before = Environment.CpuUsage.TotalTime;
        work();
        return (Environment.CpuUsage.TotalTime - before).TotalNanoseconds / rows;
    }

    private static double Wall(Action work, int rows)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalNanoseconds / rows;
    }

    private static double Median(List<double> values)
    {
        values.Sort();
        return values[values.Count / 2];
    }

    private static void Say(string name, double value) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} {value:R}"));

    // Numbers without a pattern that a branch could learn; the numpy scripts make the same.
    private static double[] Spread(int rows, int which, double low, double high)
    {
        double[] all = new double[rows];
        for (int i = 0; i < rows; i++)
        {
            all[i] = low + ((high - low) * ((i + 1 + (which * 17)) * 0.6180339887498949 % 1));
        }

        return all;
    }

    private readonly struct FourFunctions : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => TLanes.Exp(TLanes.Log(one)) + TLanes.Exp(TLanes.Log(two));
    }
}
