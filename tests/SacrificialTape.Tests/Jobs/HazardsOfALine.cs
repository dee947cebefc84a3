using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>Each hazard raises exactly its finding; a line without hazards is what it was.</summary>
public sealed class HazardsOfALine
{
    public static TheoryData<SiteHazard, string, Severity> Kinds => new()
    {
        { SiteHazard.ReversingWater, RuleIds.ReversingWater, Severity.Warning },
        { SiteHazard.CopperCouple, RuleIds.CopperCouple, Severity.Warning },
        { SiteHazard.StainlessContact, RuleIds.StainlessContact, Severity.Warning },
        { SiteHazard.CopperEarthing, RuleIds.CopperEarthing, Severity.Warning },
        { SiteHazard.CathodicProtection, RuleIds.CathodicProtection, Severity.Stop },
        { SiteHazard.StrayCurrent, RuleIds.StrayCurrent, Severity.Stop },
        { SiteHazard.UnderInsulation, RuleIds.UnderInsulation, Severity.Warning },
        { SiteHazard.SweatingLine, RuleIds.SweatingLine, Severity.Warning },
        { SiteHazard.ShelteredUnderside, RuleIds.ShelteredUnderside, Severity.Warning },
        { SiteHazard.ClampCrevice, RuleIds.ClampCrevice, Severity.Warning },
        { SiteHazard.Buried, RuleIds.BuriedTape, Severity.Warning },
        { SiteHazard.Immersed, RuleIds.ImmersedTape, Severity.Warning },
        { SiteHazard.AlkalineContact, RuleIds.AlkalineContact, Severity.Warning },
        { SiteHazard.HotWorkPlanned, RuleIds.HotWorkPlanned, Severity.Warning },
    };

    [Fact]
    public void Every_kind_of_hazard_is_tested() =>
        Assert.Equal(Enum.GetValues<SiteHazard>(), Kinds.Select(static row => row.Data.Item1).Order());

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_hazard_raises_its_finding_and_no_other(SiteHazard hazard, string rule, Severity severity)
    {
        Finding[] added = Added(new LineHazards([hazard]));
        Finding only = Assert.Single(added);
        Assert.Equal(rule, only.Rule.Id);
        Assert.Equal(severity, only.Severity);
        Assert.Equal("A", only.Subject);
    }

    [Theory]
    [InlineData(0, RuleIds.AcidStop)]
    [InlineData(5.4, RuleIds.AcidStop)]
    [InlineData(5.5, RuleIds.AcidWarning)]
    [InlineData(5.9, RuleIds.AcidWarning)]
    [InlineData(6, null)]
    [InlineData(7, null)]
    [InlineData(11, null)]
    [InlineData(11.1, RuleIds.AlkalineWarning)]
    [InlineData(12.5, RuleIds.AlkalineWarning)]
    [InlineData(12.6, RuleIds.AlkalineStop)]
    [InlineData(14, RuleIds.AlkalineStop)]
    public void A_pH_raises_at_most_one_finding(double ph, string? rule)
    {
        Finding[] added = Added(new LineHazards(acidity: Acidity.FromPh(ph)));
        Assert.Equal(rule is null ? [] : [rule], added.Select(static one => one.Rule.Id));
        Assert.All(added, one => Assert.Equal(new Measure(ph, TradeUnit.One), one.Measured));
        Assert.All(added, static one => Assert.Equal(
            one.Rule.Id is RuleIds.AcidStop or RuleIds.AlkalineStop ? Severity.Stop : Severity.Warning, one.Severity));
    }

    [Theory]
    [InlineData(1100, false)]
    [InlineData(1101, true)]
    public void Strength_is_held_against_the_safer_number(double mpa, bool stopped)
    {
        Finding[] added = Added(new LineHazards(tensileStrength: Pressure.FromMegapascals(mpa)));
        Assert.Equal(stopped ? [RuleIds.MaximumTensileStrength] : [], added.Select(static one => one.Rule.Id));
        Assert.All(added, static one => Assert.Equal(Severity.Stop, one.Severity));
    }

    [Theory]
    [InlineData(320, false)]
    [InlineData(321, true)]
    public void Hardness_is_held_against_the_safest_edition(double hv, bool stopped)
    {
        Finding[] added = Added(new LineHazards(hardness: VickersHardness.FromHv(hv)));
        Assert.Equal(stopped ? [RuleIds.MaximumHardness] : [], added.Select(static one => one.Rule.Id));
        Assert.All(added, static one => Assert.Contains("390 HV", one.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Strength_in_another_unit_is_the_same_strength() => Assert.Equal(
        new LineHazards(tensileStrength: Pressure.FromGigapascals(1.1)), new LineHazards(tensileStrength: Pressure.FromMegapascals(1100)));

    [Fact]
    public void A_line_without_hazards_is_what_it_was()
    {
        Assert.Equal(new SteelCondition(), new SteelCondition(hazards: new LineHazards([])));
        Assert.Equal("CarbonSteel, bare, Horizontal", SteelCondition.Bare.ToString());
        string[] before = [RuleIds.RecalledLifeValue, RuleIds.NoPublishedLife];
        Assert.Equal(before, Of(SteelCondition.Bare).Findings.Select(static one => one.Rule.Id));
        Assert.DoesNotContain(Of(SteelCondition.Bare).CrewSteps, static step => step.Activity is CrewActivity.Cautions or CrewActivity.Paint);
        Assert.True(Of(SteelCondition.Bare).LifeHolds);
        Assert.Null(Of(SteelCondition.Bare).Duplex);
    }

    [Fact]
    public void Hazards_are_a_set()
    {
        var one = new LineHazards([SiteHazard.Immersed, SiteHazard.Buried, SiteHazard.Immersed]);
        Assert.Equal([SiteHazard.Buried, SiteHazard.Immersed], one.Present);
        Assert.Equal(new LineHazards([SiteHazard.Buried, SiteHazard.Immersed]), one);
        Assert.True(one.Has(SiteHazard.Buried));
        Assert.False(one.Has(SiteHazard.StrayCurrent));
        Assert.Equal("Buried, Immersed, pH 5, 900 MPa, 250 HV", new LineHazards(
            one.Present, Acidity.FromPh(5), Pressure.FromMegapascals(900), VickersHardness.FromHv(250)).ToString());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_life_holds_only_where_the_zinc_is_not_touched(SiteHazard hazard, string rule, Severity severity)
    {
        bool spared = hazard == SiteHazard.HotWorkPlanned;
        LineEstimate estimate = Of(new SteelCondition(hazards: new LineHazards([hazard])));
        Assert.Equal(spared, estimate.LifeHolds);

        // A stop that sends to an engineer before anything is bonded says enough without the life.
        if (!spared && severity != Severity.Stop)
        {
            Assert.Contains("no reliance to any life", RuleSet.Default[rule].Remedy, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_life_does_not_hold_in_acid_or_in_hot_water()
    {
        Assert.False(Of(new SteelCondition(hazards: new LineHazards(acidity: Acidity.FromPh(5.8)))).LifeHolds);
        Assert.True(Of(new SteelCondition(hazards: new LineHazards(acidity: Acidity.FromPh(7)))).LifeHolds);
        Assert.False(Of(new SteelCondition(serviceTemperature: Temperature.FromDegreesCelsius(55), wetInService: true)).LifeHolds);
        Assert.True(Of(new SteelCondition(hazards: new LineHazards(hardness: VickersHardness.FromHv(400)))).LifeHolds);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_crew_is_told_first_or_told_not_to_begin(SiteHazard hazard, string rule, Severity severity)
    {
        CrewStep first = Of(new SteelCondition(hazards: new LineHazards([hazard]))).CrewSteps[0];
        Assert.Equal(severity == Severity.Stop ? CrewActivity.Stop : CrewActivity.Cautions, first.Activity);
        Assert.NotEmpty(first.Text);
        Assert.Equal(severity == Severity.Stop, first.Text.Contains(RuleSet.Default[rule].Title, StringComparison.Ordinal));
    }

    [Fact]
    public void Hot_work_tells_limits_and_to_remove_the_tape()
    {
        string said = Added(new LineHazards([SiteHazard.HotWorkPlanned]))[0].Message;
        Assert.Contains("remove the tape", said, StringComparison.Ordinal);
        Assert.Contains("OSHA 5 mg/m3", said, StringComparison.Ordinal);
        Assert.Contains("NIOSH 5 and 10", said, StringComparison.Ordinal);
        Assert.Contains("ACGIH 2 and 10", said, StringComparison.Ordinal);
        Assert.Contains("local law", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SiteHazard.CopperEarthing)]
    [InlineData(SiteHazard.CathodicProtection)]
    [InlineData(SiteHazard.StrayCurrent)]
    public void Electrical_systems_are_left_to_qualified_engineers(SiteHazard hazard) =>
        Assert.Contains("qualified engineer", Added(new LineHazards([hazard]))[0].Message, StringComparison.Ordinal);

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(static () => new LineHazards([(SiteHazard)99]));
        Assert.Throws<ArgumentOutOfRangeException>(static () => new LineHazards(tensileStrength: Pressure.FromMegapascals(49)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => Acidity.FromPh(-0.1));
        Assert.Throws<ArgumentOutOfRangeException>(static () => Acidity.FromPh(14.1));
        Assert.Throws<ArgumentOutOfRangeException>(static () => VickersHardness.FromHv(0));
        Assert.Throws<ArgumentOutOfRangeException>(static () => VickersHardness.FromHv(double.NaN));
    }

    [Fact]
    public void Needs_hand_hazards_ends_and_paint_on_to_their_line()
    {
        var needs = new LineNeeds(
            "A", ZincExposure.FromCategory(CorrosivityCategory.C3), Years(10),
            new SteelCondition(hazards: new LineHazards([SiteHazard.Buried])),
            ends: [new TapeEnd(Mm(5), Mm(20))],
            paintOver: new PaintFilm(Years(8), Years(12)));
        SurveyLine line = needs.With(Lay());
        Assert.True(line.Steel.Hazards.Has(SiteHazard.Buried));
        Assert.Equal(needs.Ends, line.Ends);
        Assert.Equal(needs.PaintOver, line.PaintOver);
    }

    private static RingLay Lay() => new(Pipe(), Stock(), Mm(20));

    private static Lifetime Years(double years) => Lifetime.Of(Duration.FromYears365(years));

    private static LineEstimate Of(SteelCondition steel) => new Job(
        "j", [new SurveyLine("A", Lay(), ZincExposure.FromCategory(CorrosivityCategory.C3), Years(10), steel)], Make.TakeOff()).Estimate().Lines[0];

    // What a line says with hazards and not without; all that it said without must still be said.
    private static Finding[] Added(LineHazards hazards)
    {
        Finding[] without = [.. Of(SteelCondition.Bare).Findings];
        Finding[] with = [.. Of(new SteelCondition(hazards: hazards)).Findings];
        Assert.Empty(without.Except(with));
        return [.. with.Except(without)];
    }
}
