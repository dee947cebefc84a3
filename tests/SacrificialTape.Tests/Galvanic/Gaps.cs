using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Galvanic;

[Properties(Arbitrary = [typeof(FilmCases)], MaxTest = 25)]
public sealed class Gaps
{
    private static readonly ProtectionCriterion Own = ProtectionCriterion.FromPotential(FilmCase.Sce(-0.776), "for the test");

    [Property]
    public void At_the_widest_gap_the_middle_is_at_the_potential_wanted(FilmCase given)
    {
        foreach ((Electrode zinc, Electrode steel) in new (Electrode, Electrode)[] { (given.LinearZinc, given.LinearSteel), (given.Zinc, given.Steel) })
        {
            var gap = new ProtectedGap(given.Film, zinc, Mm(given.ZincMm), steel, Own);
            if (gap.Extent == GapExtent.None)
            {
                continue;
            }

            double half = gap.Widest.Millimeters / 2;
            double Middle(double c) => new ThinFilmProfile(given.Film, [new(zinc, Mm(given.ZincMm)), new(steel, Mm(c))]).HighestOn(1).Volts;
            Assert.InRange(Middle(half) + 0.776, -1e-8, 1e-8);
            Assert.True(Middle(half * 1.01) > -0.776 - 1e-9);
        }
    }

    [Property]
    public void A_better_conductor_and_a_weaker_criterion_never_narrow_the_gap(FilmCase given)
    {
        double Gap(FilmCase one, ProtectionCriterion criterion) =>
            new ProtectedGap(one.Film, one.LinearZinc, Mm(one.ZincMm), one.LinearSteel, criterion) is { Extent: GapExtent.Limited } gap ? gap.Widest.Millimeters : 0;
        double plain = Gap(given, Own);
        Assert.True(Gap(given with { SiemensPerM = given.SiemensPerM * 1.5 }, Own) >= plain * (1 - 1e-9));
        Assert.True(Gap(given, ProtectionCriterion.FromPotential(FilmCase.Sce(-0.70), "weaker")) >= plain);
        Assert.True(Gap(given with { ZincMm = given.ZincMm * 1.5 }, Own) >= plain * (1 - 1e-9));
    }

    [Fact]
    public void On_wide_zinc_the_gap_goes_with_the_root_of_film_and_of_conductivity()
    {
        var given = new FilmCase(100, 0.5, 2000, 10, 0.1, 1, 0.02, 0.03, 8);
        foreach ((Electrode zinc, Electrode steel) in new (Electrode, Electrode)[] { (given.LinearZinc, given.LinearSteel), (given.Zinc, given.Steel) })
        {
            GapSensitivity sensitivity = new ProtectedGap(given.Film, zinc, Mm(given.ZincMm), steel, Own).Sensitivity();
            Near.Equal(0.5, sensitivity.ToConductivity, 1e-5);
            Near.Equal(0.5, sensitivity.ToThickness, 1e-5);
        }
    }

    [Fact]
    public void Oxygen_through_the_film_makes_its_thickness_count_twice()
    {
        var given = new FilmCase(100, 0.5, 2000, 10, 0.1, 1, 0.02, 0.03, 8);
        var steel = new TafelElectrode(
            "steel", FilmCase.Sce(-0.3), ElectricCurrentDensity.FromAmperesPerSquareMeter(0.001), ElectricPotential.FromVolts(0.06), ElectricPotential.FromVolts(0.05), OxygenSupply.ThroughFilm);
        LinearElectrode zinc = new("zinc", FilmCase.Sce(-1.03), PolarisationResistance.FromOhmSquareMeters(1e-5));
        GapSensitivity sensitivity = new ProtectedGap(given.Film, zinc, Mm(2000), steel, Own).Sensitivity();
        Near.Equal(0.5, sensitivity.ToConductivity, 0.02);
        Near.Equal(1, sensitivity.ToThickness, 0.02);
    }

    [Fact]
    public void A_gap_may_have_no_width_or_no_end()
    {
        var given = new FilmCase(100, 0.5, 25, 10, 0.1, 1, 0.02, 0.03, 8);
        ProtectedGap none = new(given.Film, given.LinearZinc, Mm(25), given.LinearSteel, ProtectionCriterion.FromPotential(FilmCase.Sce(-1.1), "below zinc"));
        Assert.Equal(GapExtent.None, none.Extent);
        Assert.Contains("Ask Extent first", Assert.Throws<InvalidOperationException>(() => none.Widest).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(none.Sensitivity);
        ProtectedGap all = new(given.Film, given.LinearZinc, Mm(25), given.LinearSteel, ProtectionCriterion.FromPotential(FilmCase.Sce(-0.5), "above steel"));
        Assert.Equal(GapExtent.Unlimited, all.Extent);
        Assert.Equal("unlimited", all.ToString());
        Assert.Throws<ArgumentException>(() => new ProtectedGap(given.Film, given.LinearZinc, Mm(25), new InertSurface("paint"), Own));
    }

    [Fact]
    public void Findings_say_what_the_reach_is_worth()
    {
        var given = new FilmCase(100, 0.5, 25, 10, 0.1, 1, 0.02, 0.03, 8);
        string[] Found(ProtectionCriterion criterion, double gapMm) =>
        [
            .. new ProtectedGap(given.Film, given.LinearZinc, Mm(25), given.LinearSteel, criterion).Judge(Mm(gapMm), RuleSet.Default, "A-1").Select(static one => one.Rule.Id),
        ];
        Assert.Empty(Found(Own, 5));
        Assert.Equal([RuleIds.GapNotProtected], Found(Own, 500));
        Assert.Equal([RuleIds.ImmersionCriterionUnderFilm], Found(ProtectionCriterion.SoilOrWater, 5));
        Assert.Equal([RuleIds.FilmNotThin], Found(Own, 0.9));
        Assert.Equal([RuleIds.ImmersionCriterionUnderFilm, RuleIds.PotentialTooLow], Found(ProtectionCriterion.HighStrengthSteel, 5));
        Assert.Equal([RuleIds.GapNotProtected], Found(ProtectionCriterion.FromPotential(FilmCase.Sce(-1.1), "below zinc"), 5));
    }
}
