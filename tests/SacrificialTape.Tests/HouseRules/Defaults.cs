using System.Reflection;
using System.Runtime.CompilerServices;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>A value that no constructor filled says so instead of passing for zero.</summary>
public sealed class Defaults
{
    public static TheoryData<Type> Structs => [.. Library.PublicStructs];

    [Theory]
    [MemberData(nameof(Structs))]
    public void A_default_value_says_unset_when_any_of_its_values_is_read(Type type)
    {
        object unset = RuntimeHelpers.GetUninitializedObject(type);
        PropertyInfo[] values = type.GetProperties(BindingFlags.Public | BindingFlags.Instance);
        Assert.NotEmpty(values);
        foreach (PropertyInfo value in values)
        {
            Exception? thrown = Record.Exception(() => value.GetValue(unset));
            InvalidOperationException said = Assert.IsType<InvalidOperationException>((thrown as TargetInvocationException)?.InnerException);
            Assert.Contains("unset", said.Message, StringComparison.Ordinal);
            Assert.Contains(type.Name, said.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Structs))]
    public void A_default_value_is_written_as_unset(Type type) =>
        Assert.Equal("unset", RuntimeHelpers.GetUninitializedObject(type).ToString());

    [Theory]
    [MemberData(nameof(Structs))]
    public void Two_default_values_are_equal(Type type)
    {
        object one = RuntimeHelpers.GetUninitializedObject(type);
        object two = RuntimeHelpers.GetUninitializedObject(type);
        Assert.True(one.Equals(two));
        Assert.Equal(one.GetHashCode(), two.GetHashCode());
    }

    [Fact]
    public void An_unset_number_is_not_zero()
    {
        Assert.NotEqual(default, CorrosionRate.FromMicrometersPerYear(0));
        Assert.NotEqual(default, new Measure(0, TradeUnit.One));
        Assert.NotEqual(default, Contingency.FromFraction(0));
    }

    [Fact]
    public void Sizes_in_bytes_are_as_stated()
    {
        Assert.Equal(8, Unsafe.SizeOf<CorrosionRate>());
        Assert.Equal(8, Unsafe.SizeOf<MassLossRate>());
        Assert.Equal(8, Unsafe.SizeOf<DepositionRate>());
        Assert.Equal(8, Unsafe.SizeOf<ElectrochemicalCapacity>());
        Assert.Equal(8, Unsafe.SizeOf<ContactResistivity>());
        Assert.Equal(8, Unsafe.SizeOf<Utilisation>());
        Assert.Equal(8, Unsafe.SizeOf<Contingency>());
        Assert.Equal(8, Unsafe.SizeOf<AreaRatio>());
        Assert.Equal(8, Unsafe.SizeOf<BareRatio>());
        Assert.Equal(8, Unsafe.SizeOf<AreaAllowance>());
        Assert.Equal(8, Unsafe.SizeOf<CuttingYield>());
        Assert.Equal(8, Unsafe.SizeOf<PolarisationResistance>());
        Assert.Equal(8, Unsafe.SizeOf<EdgeCurrent>());
        Assert.Equal(8, Unsafe.SizeOf<AnodeConsumption>());
        Assert.Equal(8, Unsafe.SizeOf<CurrentEfficiency>());
        Assert.Equal(16, Unsafe.SizeOf<ElectrodePotential>());
        Assert.Equal(8, Unsafe.SizeOf<Lifetime>());
        Assert.Equal(8, Unsafe.SizeOf<DiscountRate>());
        Assert.Equal(24, Unsafe.SizeOf<Money>());
        Assert.Equal(8, Unsafe.SizeOf<TimeExponent>());
        Assert.Equal(16, Unsafe.SizeOf<Measure>());
        Assert.Equal(16, Unsafe.SizeOf<RateRange>());
        Assert.Equal(8, Unsafe.SizeOf<LogSpread>());
        Assert.Equal(16, Unsafe.SizeOf<LogNormalRate>());
        Assert.Equal(16, Unsafe.SizeOf<SpiralSetting>());
        Assert.Equal(48, Unsafe.SizeOf<SpiralGeometry>());
    }
}
