namespace SacrificialTape.Tests.Exposure;

public sealed class Categories
{
    public static TheoryData<CorrosivityCategory, Metal> All
    {
        get
        {
            var all = new TheoryData<CorrosivityCategory, Metal>();
            foreach (CorrosivityCategory category in Enum.GetValues<CorrosivityCategory>())
            {
                foreach (Metal metal in Enum.GetValues<Metal>())
                {
                    all.Add(category, metal);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_upper_bound_belongs_to_the_category_and_the_lower_to_the_one_below(CorrosivityCategory category, Metal metal)
    {
        RateRange rates = Corrosivity.RatesOf(category, metal);
        Assert.Equal(category, Corrosivity.CategoryOf(rates.Highest, metal));
        Assert.Equal(
            category == CorrosivityCategory.CX ? null : category + 1,
            Corrosivity.CategoryOf(CorrosionRate.FromMicrometersPerYear(rates.Highest.MicrometersPerYear * 1.001), metal));
        if (category > CorrosivityCategory.C1)
        {
            Assert.Equal(Corrosivity.RatesOf(category - 1, metal).Highest, rates.Lowest);
            Assert.Equal(category - 1, Corrosivity.CategoryOf(rates.Lowest, metal));
        }
    }

    [Fact]
    public void No_rate_is_the_lowest_category_and_too_high_a_rate_none()
    {
        Assert.Equal(CorrosivityCategory.C1, Corrosivity.CategoryOf(CorrosionRate.FromMicrometersPerYear(0), Metal.Zinc));
        Assert.Null(Corrosivity.CategoryOf(MassLossRate.FromGramsPerSquareMeterYear(181), Metal.Zinc));
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => ZincExposure.FromCategory(0), "category", "C1 to C5 and CX are");
        Errors.Refused(static () => ZincExposure.FromCategory((CorrosivityCategory)7), "category");
        Errors.Refused(
            static () => ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(3), CorrosionRate.FromMicrometersPerYear(2), "coupons"),
            "highest", "2 um/a", "at least 3 um/a (the lowest rate)");
        Assert.Throws<ArgumentException>(static () => ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(3), " "));
        Assert.Throws<InvalidOperationException>(static () => ZincExposure.FromMeasurement(default, "coupons"));
    }
}
