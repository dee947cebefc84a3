using System.Reflection;
using FsCheck.Xunit;
using SacrificialTape.Tests.HouseRules;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Galvanic;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 300)]
public sealed class ChargeAndDemand
{
    [Property]
    public void Current_and_recession_are_inverse_of_one_another(LossCase given)
    {
        foreach (Metal metal in Enum.GetValues<Metal>())
        {
            CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(given.Rate);
            Near.Equal(given.Rate, FaradayLaw.Recession(FaradayLaw.CurrentOf(rate, metal), metal).MicrometersPerYear, 1e-14);
            Density density = metal == Metal.Zinc ? Zinc.Density : Density.FromKilogramsPerCubicMeter(7860);
            Near.Equal(
                FaradayLaw.MassLoss(FaradayLaw.CurrentOf(rate, metal), metal).GramsPerSquareMeterYear,
                rate.ToMassLoss(density).GramsPerSquareMeterYear,
                1e-14);
        }
    }

    [Fact]
    public void Recession_is_consumption_spread_over_the_density()
    {
        // An ampere on a square metre takes a year's consumption; through the density that is a thickness.
        double kilograms = TheoreticalCapacity.Zinc.Consumption.KilogramsPerAmpereYear;
        Near.Equal(kilograms / 7140 * 1e6, FaradayLaw.Recession(ElectricCurrentDensity.FromAmperesPerSquareMeter(1), Metal.Zinc).MicrometersPerYear, 1e-14);
    }

    [Fact]
    public void No_signature_takes_a_practical_capacity_and_own_corrosion()
    {
        const BindingFlags Public = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static;
        Type[] own = [typeof(ZincExposure), typeof(ILossLaw), typeof(CorrosionRate), typeof(OwnCorrosionAndDemand)];
        var signatures = Library.PublicTypes.SelectMany(static type =>
            type.GetConstructors(Public).Cast<MethodBase>().Concat(type.GetMethods(Public))).ToArray();
        Assert.True(signatures.Count(static one => one.GetParameters().Any(static p => p.ParameterType == typeof(PracticalCapacity))) >= 3);
        Assert.DoesNotContain(signatures, one =>
            one.GetParameters().Any(static p => p.ParameterType == typeof(PracticalCapacity))
            && one.GetParameters().Any(p => own.Any(type => p.ParameterType.IsAssignableTo(type))));

        // And the theoretical capacity cannot be made from a number.
        Assert.Empty(typeof(TheoreticalCapacity).GetConstructors(Public));
        Assert.DoesNotContain(signatures, static one => one is MethodInfo method && method.ReturnType == typeof(TheoreticalCapacity)
            && method.GetParameters().Length > 0);

        // Nor can a third way of counting be added from outside: its member cannot be overridden there.
        Assert.True(typeof(ZincConsumption).GetProperty("AmpereHoursPerKilogram", BindingFlags.NonPublic | BindingFlags.Instance)!.GetMethod is { IsAbstract: true, IsAssembly: true });
    }

    [Fact]
    public void A_practical_capacity_is_at_most_the_theoretical_one()
    {
        double most = TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram;
        Assert.All(PracticalCapacity.Published, one => Assert.InRange(one.Capacity.AmpereHoursPerKilogram, 0.8 * most, most));
        Assert.Equal(PracticalCapacity.Published.Count, PracticalCapacity.Published.Select(static one => one.Name).Distinct().Count());
        Errors.Refused(
            static () => PracticalCapacity.FromTest(ElectrochemicalCapacity.FromAmpereHoursPerKilogram(820), "foil"),
            "capacity", "820 A.h/kg", "at most 819.86", "the theoretical capacity of zinc");
        Assert.False(PracticalCapacity.FromTest(ElectrochemicalCapacity.FromAmpereHoursPerKilogram(700), "foil, one year").IsOfCastAlloy);
    }

    [Property]
    public void Breakdown_is_the_mean_of_the_curve_with_its_flat_end(LossCase given)
    {
        double initial = given.Exponent / 2;
        double yearly = Math.Min(1, given.Rate / 100);
        double years = 1 + (given.Ratio / 100);
        var breakdown = new CoatingBreakdown(BreakdownConstants.FromExperience(initial, yearly, "made up"), Duration.FromYears365(years));

        // The midpoint rule on pieces that meet at the cap is exact for straight lines.
        double cap = yearly > 0 ? Math.Min(years, (1 - initial) / yearly) : years;
        double mean = ((cap * (initial + (yearly * cap / 2))) + (years - cap)) / years;
        Near.Equal(mean, breakdown.Mean, 1e-10);
        Assert.InRange(breakdown.Final, breakdown.Mean, 1);
        Assert.InRange(breakdown.Mean, initial, 1);
    }

    [Fact]
    public void Driving_voltage_shrinks_as_steel_is_polarised_and_ends_at_zinc()
    {
        DrivingVoltage At(double cse) => new(ElectrodePotential.FromVolts(cse, ReferenceElectrode.CopperSulfate));
        Assert.True(At(-0.7).Factor > At(-0.85).Factor && At(-0.85).Factor > At(-1.0).Factor);
        Near.Equal(0, At(-1.10).Factor, 0, absolute: 1e-12);
        Assert.True(At(-1.2).Voltage.Volts < 0);
        Assert.Equal(0, At(-1.2).Factor);
    }

    [Fact]
    public void Demand_in_the_open_air_is_the_corrosion_of_steel_as_a_current()
    {
        CurrentDemand demand = CurrentDemand.FromSteelCorrosion(CorrosivityCategory.C3);
        Near.Equal(25, FaradayLaw.Recession(demand.Lowest, Metal.CarbonSteel).MicrometersPerYear, 1e-12);
        Near.Equal(50, FaradayLaw.Recession(demand.Highest, Metal.CarbonSteel).MicrometersPerYear, 1e-12);
        Assert.Equal(BasisKind.Judgement, demand.Basis.Kind);
        Assert.Contains("time-averaged", demand.Basis.Note, StringComparison.Ordinal);
        Assert.All(Enum.GetValues<DemandMedium>(), static medium => Assert.True(CurrentDemand.Of(medium).Lowest <= CurrentDemand.Of(medium).Highest));
        Errors.Refused(static () => CurrentDemand.Of((DemandMedium)99), "medium");
        Errors.Refused(
            static () => CurrentDemand.FromMeasurement(ElectricCurrentDensity.FromAmperesPerSquareMeter(2), ElectricCurrentDensity.FromAmperesPerSquareMeter(1), "x"),
            "highest", "at least 2 A/m2 (the lowest)");
    }

    [Fact]
    public void Salt_solutions_lie_on_straight_lines_between_the_entries()
    {
        Near.Equal(1.60, SaltSolution.Conductivity(Salt.SodiumChloride, 1).SiemensPerMeter, 1e-12);
        Near.Equal((1.60 + 3.02) / 2, SaltSolution.Conductivity(Salt.SodiumChloride, 1.5).SiemensPerMeter, 1e-12);
        Near.Equal(9.8, SaltSolution.Conductivity(Salt.MagnesiumChloride, 30).SiemensPerMeter, 1e-12);
        Near.Equal(0.86, SaltSolution.Conductivity(Salt.MagnesiumChloride, 0.5).SiemensPerMeter, 1e-12);
        Errors.Refused(static () => SaltSolution.Conductivity(Salt.SodiumChloride, 30), "massPercent", "at most 25 mass %");
        Errors.Refused(static () => SaltSolution.Conductivity(Salt.SodiumChloride, double.NaN), "massPercent");
        Assert.Equal(BasisKind.Recalled, SaltSolution.BasisOf(Salt.SodiumChloride).Kind);
        Assert.Equal(BasisKind.Published, SaltSolution.BasisOf(Salt.CalciumChloride).Kind);
    }

    [Property]
    public void Zinc_that_gives_evenly_is_the_limit_of_a_long_decay(SpanCase given)
    {
        double bare = 1 + given.LapMm;
        double even = ZincFeed.BesideMargin(Mm(bare), Mm(given.WidthMm)).BarePerZinc.Ratio;
        Near.Equal(bare / given.WidthMm, even, 1e-14);
        Near.Equal(even, ZincFeed.BesideMargin(Mm(bare), Mm(given.WidthMm), Mm(90_000)).BarePerZinc.Ratio, 1e-4);

        // A short decay: the edge carries all on one decay length, however wide the zinc is.
        double edge = ZincFeed.BesideMargin(Mm(bare), Mm(given.WidthMm), Mm(given.WidthMm / 50)).BarePerZinc.Ratio;
        Near.Equal(bare / (given.WidthMm / 50), edge, 1e-12);
        Assert.True(edge > even);
    }

    [Property]
    public void A_round_holiday_in_wide_zinc_lies_near_a_ring_of_one_decay_length(SpanCase given)
    {
        // K1/K0 = 1 + 1/(2x) - 1/(8x^2) + ...: the ring has the first two terms.
        double diameter = 2 * given.WidthMm;
        double decay = given.WidthMm / 20;
        double ring = ZincFeed.RoundHolidayInRing(Mm(diameter), Mm(decay)).BarePerZinc.Ratio;
        Near.Equal(ring, ZincFeed.RoundHoliday(Mm(diameter), Mm(decay)).BarePerZinc.Ratio, 1.0 / (8 * 400) * 1.1);
    }

    [Fact]
    public void A_tape_end_on_bare_steel_is_a_finding_of_its_own()
    {
        var end = new TapeEnd(Mm(5), Mm(7));
        Finding finding = Assert.Single(end.Judge(RuleSet.Default, "A-1, upper end"));
        Assert.Equal(RuleIds.BareMarginBesideTape, finding.Rule.Id);
        Assert.Equal(new Measure(5, TradeUnit.Millimeter), finding.Measured);
        Near.Equal(5.0 / 7, end.Feed!.BarePerZinc.Ratio, 1e-14);
        var covered = new TapeEnd(Length.Zero, Mm(7));
        Assert.Empty(covered.Judge(RuleSet.Default, "A-1, upper end"));
        Assert.Empty(new TapeEnd(Mm(1), Mm(7)).Judge(RuleSet.Default, "A-1, upper end"));
        Assert.Null(covered.Feed);
    }
}
