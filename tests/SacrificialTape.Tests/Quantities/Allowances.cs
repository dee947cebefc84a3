using FsCheck.Xunit;

namespace SacrificialTape.Tests.Quantities;

public sealed class Allowances
{
    [Property(MaxTest = 1000)]
    public void A_whole_number_with_a_rounding_stays_whole(int number, sbyte digits)
    {
        double value = number;
        for (int i = 0; i < Math.Abs((int)digits); i++)
        {
            value = digits > 0 ? Math.BitIncrement(value) : Math.BitDecrement(value);
        }

        if (number != 0)
        {
            Assert.Equal(number, WithAllowance.Floor(value));
            Assert.Equal(number, WithAllowance.Ceiling(value));
        }
    }

    [Property(MaxTest = 1000)]
    public void What_is_off_by_more_than_a_millionth_counts(int number)
    {
        double n = Math.Abs((long)number) % 1_000_000 + 1;
        Assert.Equal(n - 1, WithAllowance.Floor(n - (n * 1e-7)));
        Assert.Equal(n + 1, WithAllowance.Ceiling(n + (n * 1e-7)));
        Assert.True(WithAllowance.AtMost(n, n));
        Assert.True(WithAllowance.AtLeast(n, n));
        Assert.False(WithAllowance.Above(n, n));
        Assert.False(WithAllowance.Below(n, n));
        Assert.True(WithAllowance.Above(n * 1.0000001, n));
        Assert.True(WithAllowance.Below(n, n * 1.0000001));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(0.1 + 0.2, 0.3)]
    [InlineData(0.0, -0.0)]
    public void The_key_of_equality_drops_what_no_decimal_shows(double one, double other) =>
        Assert.Equal(StoredNumber.Key(one), StoredNumber.Key(other));

    [Fact]
    public void The_key_of_equality_keeps_fifteen_digits()
    {
        Assert.NotEqual(StoredNumber.Key(1), StoredNumber.Key(1.00000000000001));
        Assert.Equal(StoredNumber.Key(1), StoredNumber.Key(1.000000000000001));
    }
}
