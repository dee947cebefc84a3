using FsCheck.Xunit;

namespace SacrificialTape.Tests.Exposure;

[Properties(Arbitrary = [typeof(ExposureCases)], MaxTest = 300)]
public sealed class SiteClasses
{
    private static readonly Iso9223Edition[] Editions = Enum.GetValues<Iso9223Edition>();

    [Property]
    public void More_is_never_of_a_lower_class(SiteCase given, byte more)
    {
        foreach (Iso9223Edition edition in Editions)
        {
            int Sulfur(double value) => (int?)PollutionClasses.SulfurDioxide(Deposition(value), edition) ?? 4;
            int Chloride(double value) => (int?)PollutionClasses.Chloride(Deposition(value), edition) ?? 4;
            int Wet(double hours) => (int)PollutionClasses.Wetness(Duration.FromHours(hours), edition);
            Assert.True(Sulfur(given.Sulfur + more) >= Sulfur(given.Sulfur));
            Assert.True(Chloride(given.Chloride + more) >= Chloride(given.Chloride));
            Assert.True(Wet((given.Percent * 8) + more) >= Wet(given.Percent * 8));
        }
    }

    [Property]
    public void The_old_edition_never_calls_sulfur_dioxide_worse(SiteCase given) => Assert.True(
        PollutionClasses.SulfurDioxide(Deposition(given.Sulfur), Iso9223Edition.Of1992)
        <= PollutionClasses.SulfurDioxide(Deposition(given.Sulfur), Iso9223Edition.Of2012));

    [Fact]
    public void Above_the_scheme_there_is_no_class()
    {
        foreach (Iso9223Edition edition in Editions)
        {
            Assert.Null(PollutionClasses.SulfurDioxide(Deposition(200.1), edition));
            Assert.Null(PollutionClasses.Chloride(Deposition(1500.1), edition));
            Assert.Equal(WetnessClass.Tau5, PollutionClasses.Wetness(Duration.FromYears365(1), edition));
        }

        Assert.Null(PollutionClasses.SulfurDioxide(Concentration(250.1), Iso9223Edition.Of2012));
    }

    [Fact]
    public void What_was_recalled_says_so()
    {
        Assert.Equal(BasisKind.Published, PollutionClasses.BasisOf(SulfurDioxideClass.P1, Iso9223Edition.Of2012).Kind);
        Assert.Equal(BasisKind.Recalled, PollutionClasses.BasisOf(SulfurDioxideClass.P2, Iso9223Edition.Of2012).Kind);
        Assert.Equal(BasisKind.Published, PollutionClasses.BasisOf(SulfurDioxideClass.P3, Iso9223Edition.Of1992).Kind);
        Assert.Equal(BasisKind.Published, PollutionClasses.BasisOfChloride(Iso9223Edition.Of1992).Kind);
        Assert.Equal(BasisKind.Recalled, PollutionClasses.BasisOfChloride(Iso9223Edition.Of2012).Kind);
        Assert.Equal(BasisKind.Published, PollutionClasses.BasisOf(WetnessClass.Tau3, Iso9223Edition.Of1992).Kind);
        Assert.Equal(BasisKind.Recalled, PollutionClasses.BasisOf(WetnessClass.Tau4, Iso9223Edition.Of1992).Kind);
        Assert.Equal(BasisKind.Recalled, PollutionClasses.BasisOf(WetnessClass.Tau1, Iso9223Edition.Of2012).Kind);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => PollutionClasses.SulfurDioxide(Deposition(1), default), "edition", "of 1992 or of 2012");
        Errors.Refused(static () => PollutionClasses.Chloride(Deposition(1), default), "edition");
        Errors.Refused(static () => PollutionClasses.Wetness(Duration.FromHours(1), default), "edition");
        Errors.Refused(static () => PollutionClasses.SulfurDioxide(Concentration(1), Iso9223Edition.Of1992), "edition", "2012 only");
        Errors.Refused(static () => PollutionClasses.SulfurDioxideDeposition(Concentration(-1)), "concentration", "-1 ug/m3", "at least 0 ug/m3");
        Errors.Refused(static () => PollutionClasses.Wetness(Duration.FromHours(8761), Iso9223Edition.Of2012), "wetInAYear", "8761 h", "at most 8760 h");
    }

    private static DepositionRate Deposition(double value) => DepositionRate.FromMilligramsPerSquareMeterDay(value);

    private static MassConcentration Concentration(double value) => MassConcentration.FromMicrogramsPerCubicMeter(value);
}
