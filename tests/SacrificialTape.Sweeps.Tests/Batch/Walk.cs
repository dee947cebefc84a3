using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>How rows are walked: any cut, any width, no allocation, nothing written over.</summary>
public sealed class Walk
{
    private static readonly double[] Celsius = Spread(0, -15, 25);
    private static readonly double[] Percent = Spread(1, 40, 90);
    private static readonly double[] Sulfur = Spread(2, 1, 120);
    private static readonly double[] Chloride = Spread(3, 1, 700);
    private static readonly double[] Zinc = Spread(4, 1, 200);

    [Fact]
    public void A_row_is_the_same_bits_wherever_a_batch_is_cut()
    {
        double[] whole = Life(0, Celsius.Length);
        for (int length = 1; length <= 21; length++)
        {
            for (int start = 0; start + length <= Celsius.Length; start += length)
            {
                Assert.Equal(whole[start..(start + length)], Life(start, length));
            }
        }
    }

    [Fact]
    public void Vectors_of_every_width_give_the_same_bits()
    {
        double[] two = Rates<TwoLanes>();
        Assert.Equal(two, Rates<FourLanes>());
        Assert.Equal(two, Rates<EightLanes>());
    }

    [Fact]
    public void One_number_for_all_rows_is_a_column_of_it()
    {
        double[] one = new double[Celsius.Length];
        double[] other = new double[Celsius.Length];
        FirstYearRateRows.Zinc(12.5, Percent, Sulfur, 33, one);
        FirstYearRateRows.Zinc(Celsius.Select(static _ => 12.5).ToArray(), Percent, Sulfur, Celsius.Select(static _ => 33.0).ToArray(), other);
        Assert.Equal(other, one);
    }

    [Fact]
    public void No_rows_are_no_work() => FirstYearRateRows.Zinc(Array.Empty<double>(), 80, 5, 5, []);

    [Fact]
    public void Columns_of_another_length_are_refused()
    {
        ArgumentException thrown = Assert.Throws<ArgumentException>(
            "humidityPercent", static () => FirstYearRateRows.Zinc(new double[3], new double[2], 5, 5, new double[3]));
        Assert.Contains("2 rows, but the destination has 3", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_destination_over_a_column_is_refused()
    {
        double[] both = new double[8];
        ArgumentException thrown = Assert.Throws<ArgumentException>(
            "zincUm", () => LifeRows.Linear(both.AsSpan(1, 4), 4, both.AsSpan(3, 4)));
        Assert.Contains("Shares memory with the destination", thrown.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("firstYearUmPerYear", () => LifeRows.Linear(80, both, both));
        LifeRows.Linear(both.AsSpan(0, 4), 4, both.AsSpan(4, 4));
    }

    [Fact]
    public void Nothing_is_allocated()
    {
        double[] rates = new double[Celsius.Length];
        double[] years = new double[Celsius.Length];
        long least = long.MaxValue;

        // The runtime itself may allocate on a first call, or when it compiles a method anew.
        for (int i = 0; i < 20; i++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            Work(rates, years);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.Equal(0, least);
    }

    [Fact]
    public void A_column_tells_what_it_holds()
    {
        Column single = 2.5;
        Column rows = Celsius;
        Assert.True(single.IsSingle && single.Length == 1 && single[7] == 2.5);
        Assert.True(!rows.IsSingle && rows.Length == Celsius.Length && rows[3] == Celsius[3]);
        Assert.True(Column.FromDouble(1).IsSingle && Column.FromRows(Zinc).Length == Zinc.Length);
    }

    private static void Work(double[] rates, double[] years)
    {
        FirstYearRateRows.Zinc(Celsius, Percent, Sulfur, Chloride, rates);
        LifeRows.PowerLaw(Zinc, rates, 0.813, years);
        LifeRows.PowerLaw(Zinc.AsSpan(0, 3), rates.AsSpan(0, 3), rates.AsSpan(3, 3), years.AsSpan(0, 3));
        SpiralRows.Angle(60.3, Zinc, Wrapping.LapConvention.LapBetweenMarks, 5, years);
        ReachRows.ToMiddleOfGap(0.5, Zinc, 2, -1, -0.65, -0.85, years);
        ContactVoltageRows.Lost(Zinc, 5.9e-8, 0.01, 1, 10, 10, 1000, 100, years);
        LifeFromClimateRows.Zinc(Celsius, Percent, Sulfur, Chloride, Zinc, 0.813, years);
        LifeFromClimateRows.Zinc(11, 76, 6, 25, Zinc, 0.813, years);
        HolidayLifeRows.WithOwnCorrosion(Zinc, 0.8, 0.7, 0.01, 2, 0.813, 7140, years);
        ConsumptionRows.AnodeMass(Zinc, 20, 780, 0.8, years);
    }

    private static double[] Life(int start, int length)
    {
        double[] rates = new double[length];
        double[] years = new double[length];
        FirstYearRateRows.Zinc(
            Celsius.AsSpan(start, length), Percent.AsSpan(start, length), Sulfur.AsSpan(start, length), Chloride.AsSpan(start, length), rates);
        LifeRows.PowerLaw(Zinc.AsSpan(start, length), rates, 0.813, years);
        return years;
    }

    private static double[] Rates<TLanes>()
        where TLanes : struct, ILanes<TLanes>
    {
        double[] rates = new double[Celsius.Length];
        RowLoop.Run<FirstYearRateRows.ZincRates, TLanes>(
            new FirstYearRateRows.ZincRates(Celsius, Percent, Sulfur, Chloride, rates, Exposure.DoseRangeTerms.Fit), rates.Length);
        return rates;
    }

    // Numbers without a pattern that the lanes could share.
    private static double[] Spread(int which, double low, double high) =>
        [.. Enumerable.Range(1, 1003).Select(i => low + ((high - low) * (((i + (which * 17)) * 0.6180339887498949) % 1)))];
}
