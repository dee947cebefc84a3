namespace SacrificialTape.Tests.Exposure;

public sealed class IndoorRates
{
    // The scheme of low corrosivity splits C1 in three and C2 in two: where they meet, both schemes have one bound.
    [Theory]
    [InlineData(Metal.Zinc, 7140)]
    [InlineData(Metal.CarbonSteel, 7860)]
    public void Indoor_categories_join_one_another_and_the_categories_of_the_open_air(Metal metal, double density)
    {
        double before = 0;
        foreach (IndoorCategory category in Enum.GetValues<IndoorCategory>())
        {
            RateRange range = IndoorCorrosivity.RatesOf(category, metal);
            Near.Equal(before, range.Lowest.MicrometersPerYear, 1e-12);
            before = range.Highest.MicrometersPerYear;
            MassLossRate most = range.Highest.ToMassLoss(Density.FromKilogramsPerCubicMeter(density));
            Assert.Equal(category, IndoorCorrosivity.CategoryOf(most, metal));
            CorrosivityCategory outside = category <= IndoorCategory.IC3 ? CorrosivityCategory.C1 : CorrosivityCategory.C2;
            Assert.Equal(outside, Corrosivity.CategoryOf(most, metal));
            MassLossRate above = MassLossRate.FromGramsPerSquareMeterYear(most.GramsPerSquareMeterYear * 1.001);
            Assert.Equal(category == IndoorCategory.IC5 ? null : category + 1, IndoorCorrosivity.CategoryOf(above, metal));
            bool ends = category is IndoorCategory.IC3 or IndoorCategory.IC5;
            Assert.Equal(ends ? outside + 1 : outside, Corrosivity.CategoryOf(above, metal));
        }
    }

    [Fact]
    public void A_room_of_an_example_has_the_rates_of_its_category_and_says_where_they_come_from()
    {
        foreach (IndoorPlace place in Enum.GetValues<IndoorPlace>())
        {
            FirstYearRate room = FirstYearRate.Indoors(Metal.Zinc, place);
            Assert.Equal(Corrosivity.RatesOf(room.Category!.Value, Metal.Zinc), room.Range);
            Assert.Equal(ExposureMedium.Air, room.Medium);
            Assert.Equal([RuleIds.IndoorExample], room.Judge(RuleSet.Default, "hall").Select(static one => one.Rule.Id));
        }

        Assert.True(FirstYearRate.Indoors(Metal.Zinc, IndoorPlace.HumidProduction).Range.Highest > FirstYearRate.Indoors(Metal.Zinc, IndoorPlace.UnheatedWithCondensation).Range.Highest);
    }

    [Fact]
    public void A_room_of_an_indoor_category_says_that_it_is_recalled()
    {
        FirstYearRate room = FirstYearRate.Indoors(Metal.Zinc, IndoorCategory.IC4);
        Assert.Null(room.Category);
        Assert.False(room.AboveCategories);
        Assert.Equal([RuleIds.RecalledRate, RuleIds.IndoorRate], room.Judge(RuleSet.Default, "hall").Select(static one => one.Rule.Id));
    }

    [Fact]
    public void What_is_not_known_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(static () => IndoorCorrosivity.RatesOf((IndoorCategory)6, Metal.Zinc));
        Assert.Throws<ArgumentOutOfRangeException>(static () => IndoorCorrosivity.RatesOf(0, Metal.Zinc));
        Assert.Throws<ArgumentOutOfRangeException>(static () => IndoorCorrosivity.RatesOf(IndoorCategory.IC1, (Metal)7));
        Assert.Throws<ArgumentOutOfRangeException>(static () => IndoorCorrosivity.CategoryOf((IndoorPlace)9));
        Assert.Throws<ArgumentOutOfRangeException>(static () => FirstYearRate.Indoors(Metal.Zinc, (IndoorPlace)9));
        Assert.Throws<ArgumentOutOfRangeException>(static () => FirstYearRate.InSoilByPowerLaw((Metal)7));
    }
}
