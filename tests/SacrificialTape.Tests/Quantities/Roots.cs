namespace SacrificialTape.Tests.Quantities;

public sealed class Roots
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_bracket_closes_on_the_root(int which)
    {
        (Func<double, double> f, double low, double high, double root) = which switch
        {
            0 => ((Func<double, double>)(static x => (x * x) - 2), 0.0, 2.0, Math.Sqrt(2)),
            1 => (static x => Math.Pow(x, 9) - 1e-9, 0.0, 5.0, 0.1),
            2 => (static x => x < 1.0 / 3 ? -1 : 1e6, 0.0, 1.0, 1.0 / 3),
            3 => (static x => Math.Exp(-x) - x, 3.0, 0.0, 0.5671432904097838),
            _ => (static x => x - 7, 7.0, 9.0, 7.0),
        };
        int calls = 0;
        double found = BracketedRoot.Find(x => Count(f(x), ref calls), low, high, 1e-14);
        Near.Equal(root, found, 1e-13);
        Assert.InRange(calls, 1, which == 2 ? 120 : 60);
    }

    [Fact]
    public void A_bracket_without_a_root_is_refused() => Assert.Contains(
        "one sign at both ends", Assert.Throws<ArgumentException>(static () => BracketedRoot.Find(static x => (x * x) + 1, -1, 1, 1e-9)).Message, StringComparison.Ordinal);

    private static double Count(double value, ref int calls)
    {
        calls++;
        return value;
    }
}
