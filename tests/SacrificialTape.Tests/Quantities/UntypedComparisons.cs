using SacrificialTape.Tests.HouseRules;

namespace SacrificialTape.Tests.Quantities;

/// <summary>Values have the same order for a caller that knows their type and for one that does not, as F# and lists of objects.</summary>
public sealed class UntypedComparisons
{
    private static readonly object[][] InOrder =
    [
        [new Money(-2m, "EUR"), new Money(1m, "EUR"), new Money(1.5m, "EUR")],
        [Lifetime.Of(Duration.FromYears365(1)), Lifetime.Of(Duration.FromYears365(30)), Lifetime.Unlimited],
        [CorrosionRate.FromMicrometersPerYear(0.1), CorrosionRate.FromMicrometersPerYear(2), CorrosionRate.FromMicrometersPerYear(25)],
        [MassLossRate.FromGramsPerSquareMeterYear(1), MassLossRate.FromGramsPerSquareMeterYear(2), MassLossRate.FromGramsPerSquareMeterYear(300)],
        [Probability.FromFraction(0), Probability.FromFraction(0.5), Probability.FromFraction(1)],
    ];

    [Fact]
    public void Every_type_with_an_order_has_it_untyped_too()
    {
        Type[] ordered = [.. Library.PublicTypes.Where(static type => type.GetInterfaces().Contains(typeof(IComparable<>).MakeGenericType(type)) && !type.IsEnum)];
        Assert.All(ordered, static type => Assert.True(typeof(IComparable).IsAssignableFrom(type), type.Name));
        Assert.Equal(ordered.Select(static type => type.Name).Order(StringComparer.Ordinal), InOrder.Select(static row => row[0].GetType().Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Objects_sort_as_values_do_and_null_comes_first()
    {
        foreach (object[] row in InOrder)
        {
            object?[] mixed = [row[2], null, row[0], row[1]];
            Array.Sort(mixed);
            Assert.Equal([null, .. row], mixed);
            Assert.Equal(0, ((IComparable)row[1]).CompareTo(row[1]));
        }
    }

    [Fact]
    public void Another_type_or_another_currency_is_refused()
    {
        foreach (object[] row in InOrder)
        {
            Assert.Contains(
                $"A Int32 cannot be compared with a {row[0].GetType().Name}", Assert.Throws<ArgumentException>("other", () => ((IComparable)row[0]).CompareTo(1)).Message, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentException>(static () => ((IComparable)new Money(1m, "EUR")).CompareTo(new Money(1m, "USD")));
    }
}
