using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Sampling;

/// <summary>What inputs make of a share, and how they go together.</summary>
public sealed class Values
{
    private static readonly DistributedValues[] Smooth =
    [
        new UniformValues(-3, 8),
        new TriangularValues(1, 2, 7),
        new TriangularValues(1, 1, 7),
        new TriangularValues(1, 7, 7),
        new NormalValues(4, 0.5),
        new LogNormalValues(2.1, 0.4),
        new TruncatedValues(new NormalValues(4, 0.5), 3.9, 6),
        new TruncatedValues(new LogNormalValues(2.1, 0.4), 1, 2),
    ];

    [Property(MaxTest = 500)]
    public void The_share_below_a_drawn_value_is_the_share_drawn(PositiveInt some)
    {
        double share = (1 + (some.Get * 7919L % 99_998)) / 100_000.0;
        Assert.All(Smooth, values => Assert.Equal(share, values.Below(values.At(share)), 1e-12));
    }

    // Quantiles of the standard normal distribution to 15 digits, as printed in tables (for instance NIST handbook 1.3.6.7.1 in fewer digits).
    [Theory]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.95, 1.6448536269514722)]
    [InlineData(0.5, 0)]
    public void Normal_draws_are_normal_quantiles(double share, double z)
    {
        Assert.Equal(10 + (3 * z), new NormalValues(10, 3).At(share), 1e-14 * 16);
        Assert.Equal(2 * Math.Exp(0.3 * z), new LogNormalValues(2, 0.3).At(share), 1e-14 * 4);
    }

    // An array, a list, a sequence, single numbers: the same values, and a caller in C# is never asked which overload is meant.
    [Fact]
    public void Numbers_may_come_as_any_sequence()
    {
        double[] array = [1, 2.5, 4];
        List<double> list = [1, 2.5, 4];
        Assert.All(
            new ListedValues[] { new(array), new(list), new(array.AsSpan()), new(array.Select(static one => one)), new([1, 2.5, 4]) },
            static one => Assert.Equal(new ListedValues(1, 2.5, 4), one));
        Assert.All(
            new EmpiricalValues[] { new(array), new(list), new(list.AsReadOnly()), new([4, 1, 2.5]) },
            static one => Assert.Equal(new EmpiricalValues(1, 2.5, 4), one));
        Assert.All(new SacrificialTape.Sweeps.Answers.Exceedance[] { new(array), new(list), new(1, 2.5, 4) }, static one => Assert.Equal([1, 2.5, 4], one.Thresholds));
        Assert.Throws<ArgumentException>("values", static () => new ListedValues(new List<double>()));
        Assert.Throws<ArgumentNullException>("values", static () => new ListedValues((IEnumerable<double>)null!));
        Assert.Throws<ArgumentNullException>("measured", static () => new EmpiricalValues((IEnumerable<double>)null!));
        Assert.Throws<ArgumentNullException>("thresholds", static () => new SacrificialTape.Sweeps.Answers.Exceedance((IEnumerable<double>)null!));
    }

    [Fact]
    public void A_range_without_levels_is_for_draws_alone()
    {
        Assert.Null(new RangedValues(1, 2).Levels);
        Assert.Equal(3, new RangedValues(1, 2, 3).Levels);
        Assert.Contains("state a range with its number of levels", Assert.Throws<ArgumentException>(
            static () => new GridDesign().RowsOf(new SweepInputs([new("x", "", new RangedValues(1, 2))]))).Message, StringComparison.Ordinal);
        Assert.Equal(1.5, new RangedValues(1, 2).At(0.5));
    }

    [Fact]
    public void Listed_and_measured_values_are_drawn_with_equal_chance()
    {
        var listed = new ListedValues(5, 1, 3);
        Assert.Equal([5, 5, 1, 3, 3], new[] { 0.01, 0.33, 0.34, 0.67, 0.99 }.Select(listed.At));
        var measured = new EmpiricalValues(5, 1, 3, 3);
        Assert.Equal([1, 3, 3, 5], new[] { 0.1, 0.3, 0.6, 0.8 }.Select(measured.At));
        Assert.Equal([0, 0.25, 0.75, 0.75, 1], new double[] { 0, 1, 3, 4, 5 }.Select(measured.Below));
    }

    [Fact]
    public void A_range_is_drawn_by_differences_or_by_ratios()
    {
        Assert.Equal(2.5, new RangedValues(2, 4).At(0.25));
        Assert.Equal(10, new RangedValues(1, 100, 3, RangeSpacing.Logarithmic).At(0.5), 1e-13);
    }

    [Fact]
    public void A_tail_that_holds_next_to_nothing_is_refused() => Assert.Contains(
        "at least 1E-06 must",
        Assert.Throws<ArgumentOutOfRangeException>("low", static () => new TruncatedValues(new NormalValues(0, 1), 6, 8)).Message,
        StringComparison.Ordinal);

    [Theory]
    [InlineData(0.8)]
    [InlineData(-0.6)]
    public void Inputs_go_together_as_stated_and_each_alone_is_as_before(double r)
    {
        SweepInput[] two = [new("rate", "um/a", new NormalValues(4, 1)), new("foil", "um", new NormalValues(80, 5))];
        var inputs = new SweepInputs(two, [new InputCorrelation("foil", "rate", r)]);
        SweepBlock all = new SobolDesign(17, 1 << 14).Make(inputs, 0, 1 << 14);
        double[] x = [.. all["rate"].ToArray().Select(static value => value - 4)];
        double[] y = [.. all["foil"].ToArray().Select(static value => (value - 80) / 5)];
        Assert.Equal(r, x.Zip(y, static (a, b) => a * b).Average(), 5e-3);
        Assert.Equal(1, x.Average(static a => a * a), 5e-3);
        Assert.Equal(1, y.Average(static b => b * b), 5e-3);
        Assert.Equal(0, y.Average(), 2e-3);
    }

    [Fact]
    public void An_input_that_goes_with_none_keeps_its_bits()
    {
        SweepInput[] three = [new("a", "", new UniformValues(0, 1)), new("b", "", new UniformValues(0, 1)), new("c", "", new UniformValues(0, 1))];
        var alone = new SweepInputs(three);
        var mixed = new SweepInputs(three, [new InputCorrelation("a", "c", 0.5)]);
        Assert.Equal(new RandomDesign(1, 50).Make(alone, 0, 50)["b"].ToArray(), new RandomDesign(1, 50).Make(mixed, 0, 50)["b"].ToArray());
        Assert.NotEqual(new RandomDesign(1, 50).Make(alone, 0, 50)["c"].ToArray(), new RandomDesign(1, 50).Make(mixed, 0, 50)["c"].ToArray());
    }

    [Fact]
    public void Correlations_that_contradict_one_another_are_refused()
    {
        SweepInput[] three = [new("a", "", new UniformValues(0, 1)), new("b", "", new UniformValues(0, 1)), new("c", "", new UniformValues(0, 1))];
        string said = Assert.Throws<ArgumentException>(() => new SweepInputs(
            three, [new("a", "b", 0.9), new("b", "c", 0.9), new("a", "c", -0.9)])).Message;
        Assert.Contains("what 'c' has in common with 'a', 'b'", said, StringComparison.Ordinal);
        Assert.Contains("not positive definite", said, StringComparison.Ordinal);
        Assert.Contains("stated twice", Assert.Throws<ArgumentException>(() => new SweepInputs(three, [new("a", "b", 0.1), new("b", "a", 0.1)])).Message, StringComparison.Ordinal);
        Assert.Contains("No input is named 'd'", Assert.Throws<ArgumentException>(() => new SweepInputs(three, [new("a", "d", 0.1)])).Message, StringComparison.Ordinal);
        Assert.Contains("Two inputs are named 'a'", Assert.Throws<ArgumentException>(() => new SweepInputs([three[0], three[0]])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_numbers_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("value", static () => new FixedValue(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("high", static () => new UniformValues(1, 1));
        Assert.Throws<ArgumentOutOfRangeException>("low", static () => new RangedValues(0, 1, 2, RangeSpacing.Logarithmic));
        Assert.Throws<ArgumentOutOfRangeException>("levels", static () => new RangedValues(0, 1, 1));
        Assert.Throws<ArgumentOutOfRangeException>("likeliest", static () => new TriangularValues(0, 2, 1));
        Assert.Throws<ArgumentOutOfRangeException>("deviation", static () => new NormalValues(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>("median", static () => new LogNormalValues(0, 1));
        Assert.Throws<ArgumentException>("values", static () => new ListedValues());
        Assert.Throws<ArgumentException>("measured", static () => new EmpiricalValues(1));
        Assert.Throws<ArgumentOutOfRangeException>("share", static () => new UniformValues(0, 1).At(1));
        Assert.Throws<ArgumentOutOfRangeException>("coefficient", static () => new InputCorrelation("a", "b", 1));
        Assert.Throws<ArgumentException>("other", static () => new InputCorrelation("a", "a", 0.5));
    }
}
