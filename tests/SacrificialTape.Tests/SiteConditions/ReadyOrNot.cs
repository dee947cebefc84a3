using FsCheck.Xunit;

namespace SacrificialTape.Tests.SiteConditions;

[Properties(MaxTest = 300)]
public sealed class ReadyOrNot
{
    private const int Things = 12;

    // Each thing measured: not at all, well, or badly; the digit of a number to base 3 says which.
    [Property]
    public void Ready_only_when_everything_was_measured_and_is_good(int seed)
    {
        int[] how = Digits(seed);
        ReadinessVerdict expected = how.Contains(2) ? ReadinessVerdict.NotReady : how.Contains(0) ? ReadinessVerdict.CannotBeSaid : ReadinessVerdict.Ready;
        Assert.Equal(expected, Verdict(how));
    }

    [Property]
    public void A_worse_measurement_never_makes_ready(int seed, byte which)
    {
        int[] how = Digits(seed);
        int[] worse = [.. how];
        worse[which % Things] = 2;
        Assert.Equal(ReadinessVerdict.NotReady, Verdict(worse));
    }

    [Property]
    public void Leaving_something_out_never_makes_ready(int seed, byte which)
    {
        int[] how = Digits(seed);
        int[] less = [.. how];
        less[which % Things] = 0;
        Assert.NotEqual(ReadinessVerdict.Ready, Verdict(less));
    }

    [Fact]
    public void Everything_good_is_ready_and_nothing_measured_cannot_be_said()
    {
        Assert.Equal(ReadinessVerdict.Ready, Verdict([.. Enumerable.Repeat(1, Things)]));
        var nothing = new SurfaceReadiness(new SurfaceReading(), RuleSet.Default, "A-1");
        Assert.Equal(ReadinessVerdict.CannotBeSaid, nothing.Verdict);
        Assert.All(nothing.Findings, static one => Assert.Equal(RuleIds.SurfaceNotMeasured, one.Rule.Id));
        Assert.Equal(
            ["A-1, temperature and humidity of the air", "A-1, surface temperature", "A-1, service temperature", "A-1, dryness", "A-1, how long it has been dry", "A-1, how long it will stay dry", "A-1, cleaning grade", "A-1, dust", "A-1, oil, wax, silicone and bitumen", "A-1, soluble salts", "A-1, paint"],
            nothing.Findings.Select(static one => one.Subject));
        Assert.Equal("nothing measured", nothing.Reading.ToString());
    }

    [Fact]
    public void Flash_rust_is_judged_after_water_jetting()
    {
        Assert.Contains(RuleIds.MaximumFlashRust, Ids(FlashRust.Medium));
        Assert.DoesNotContain(RuleIds.MaximumFlashRust, Ids(FlashRust.Light));
        static IEnumerable<string> Ids(FlashRust rust) => new SurfaceReadiness(
            new SurfaceReading(cleaning: CleaningGrade.Wa2, flashRust: rust), RuleSet.Default, "A-1").Findings.Select(static one => one.Rule.Id);
    }

    [Fact]
    public void A_wa_grade_asks_for_flash_rust_and_a_high_sa_grade_for_the_profile()
    {
        Assert.Contains("A-1, flash rust after water jetting", Of(new SurfaceReading(cleaning: CleaningGrade.Wa2)));
        Assert.Contains("A-1, profile of blasted steel", Of(new SurfaceReading(cleaning: CleaningGrade.Sa2Half)));
        Assert.DoesNotContain("A-1, profile of blasted steel", Of(new SurfaceReading(cleaning: CleaningGrade.Sa2)));
        Assert.DoesNotContain("A-1, flash rust after water jetting", Of(new SurfaceReading(cleaning: CleaningGrade.Wa2, flashRust: FlashRust.Light)));
        static IEnumerable<string> Of(SurfaceReading reading) => new SurfaceReadiness(reading, RuleSet.Default, "A-1").Findings.Select(static one => one.Subject);
    }

    [Theory]
    [InlineData(CleaningGrade.St2, null)]
    [InlineData(CleaningGrade.St3, null)]
    [InlineData(CleaningGrade.Sa1, RuleIds.MinimumBlastCleaning)]
    [InlineData(CleaningGrade.Sa2, null)]
    [InlineData(CleaningGrade.Wa1, RuleIds.MinimumJetCleaning)]
    [InlineData(CleaningGrade.Wa2Half, null)]
    public void Grades_are_held_against_their_own_method(CleaningGrade grade, string? rule) => Assert.Equal(
        rule,
        new SurfaceReadiness(new SurfaceReading(cleaning: grade), RuleSet.Default, "A-1").Findings
            .FirstOrDefault(static one => one.Rule.Id != RuleIds.SurfaceNotMeasured)?.Rule.Id);

    [Fact]
    public void Every_residue_has_a_reason_of_its_own()
    {
        var reading = new SurfaceReading(residues: [.. Enum.GetValues<SurfaceResidue>()]);
        Assert.Equal(
            [RuleIds.OilOnSurface, RuleIds.WaxOnSurface, RuleIds.SiliconeOnSurface, RuleIds.BitumenOnSurface],
            new SurfaceReadiness(reading, RuleSet.Default, "A-1").Findings.Select(static one => one.Rule.Id).Where(static id => id != RuleIds.SurfaceNotMeasured));
    }

    [Fact]
    public void A_hot_pipe_stops_with_its_caution()
    {
        var reading = new SurfaceReading(surfaceTemperature: Temperature.FromDegreesCelsius(65));
        Finding hot = new SurfaceReadiness(reading, RuleSet.Default, "A-1").Findings.Single(static one => one.Rule.Id == RuleIds.MaximumLayingTemperature);
        Assert.Equal(Severity.Stop, hot.Severity);
        Assert.Contains("Hot pipe burns", hot.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(24.9, ProfileComparator.Grit, ProfileGrade.FinerThanFine)]
    [InlineData(25, ProfileComparator.Grit, ProfileGrade.Fine)]
    [InlineData(59.9, ProfileComparator.Grit, ProfileGrade.Fine)]
    [InlineData(60, ProfileComparator.Grit, ProfileGrade.Medium)]
    [InlineData(60, ProfileComparator.Shot, ProfileGrade.Medium)]
    [InlineData(70, ProfileComparator.Shot, ProfileGrade.Coarse)]
    [InlineData(150, ProfileComparator.Grit, ProfileGrade.CoarserThanCoarse)]
    public void A_profile_has_the_grade_of_its_segment(double um, ProfileComparator comparator, ProfileGrade grade) =>
        Assert.Equal(grade, new SurfaceProfile(Length.FromMicrometers(um), comparator).Grade);

    [Fact]
    public void Salts_go_with_the_water_and_against_the_area()
    {
        AreaDensity Of(double ml, double mm2, double before, double after) => new SaltReading(
            Volume.FromMilliliters(ml), Area.FromSquareMillimeters(mm2), ElectricConductivity.FromMicrosiemensPerCentimeter(before),
            ElectricConductivity.FromMicrosiemensPerCentimeter(after)).Salts;
        double one = Of(10, 1250, 3, 10).MilligramsPerSquareMeter;
        Near.Equal(2 * one, Of(20, 1250, 3, 10).MilligramsPerSquareMeter, 1e-14);
        Near.Equal(one / 2, Of(10, 2500, 3, 10).MilligramsPerSquareMeter, 1e-14);
        Near.Equal(one, Of(10, 1250, 13, 20).MilligramsPerSquareMeter, 1e-14);
        Assert.Equal(0, Of(10, 1250, 3, 3).MilligramsPerSquareMeter);
        Errors.Refused(() => Of(10, 1250, 3, 2.9), "after", "2.9 uS/cm", "at least that before");
        Errors.Refused(() => Of(0.5, 1250, 3, 4), "water", "0.5 ml");
        Errors.Refused(() => Of(10, 0.00125, 3, 4), "patch", "mm2");
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => new DustRating(6, 0), "quantity", "6", "at least 0 and at most 5");
        Errors.Refused(static () => new DustRating(0, -1), "sizeClass", "-1");
        Errors.Refused(static () => new SurfaceProfile(Length.FromMillimeters(60), ProfileComparator.Grit), "height", "60000 um");
        Errors.Refused(static () => new SurfaceReading(surfaceTemperature: Temperature.FromDegreesCelsius(-61)), "surfaceTemperature", "-61 degC");
        Errors.Refused(static () => new SurfaceReading(dryFor: Duration.FromHours(-1)), "dryFor", "-1 h");
        Errors.Refused(static () => new SurfaceReading(salts: AreaDensity.FromKilogramsPerSquareMeter(1)), "salts", "1000000 mg/m2");
        Errors.Refused(static () => new SurfaceReading(cleaning: (CleaningGrade)99), "cleaning");
        Errors.Refused(static () => new SurfaceReading(residues: [(SurfaceResidue)9]), "residues");
        Errors.Refused(static () => CleaningGrades.NameOf((CleaningGrade)99), "grade");
    }

    private static int[] Digits(int seed)
    {
        // Mostly good, so that every verdict comes up.
        var random = new Random(seed);
        return [.. Enumerable.Range(0, Things).Select(_ => random.Next(12) switch { 0 => 0, 1 => 2, _ => 1 })];
    }

    private static ReadinessVerdict Verdict(int[] how)
    {
        T? Pick<T>(int thing, T good, T bad)
            where T : struct => how[thing] switch { 0 => null, 1 => good, _ => bad };
        T? Take<T>(int thing, T good, T bad)
            where T : class => how[thing] switch { 0 => null, 1 => good, _ => bad };
        Temperature cool = Temperature.FromDegreesCelsius(20);
        return new SurfaceReadiness(
            new SurfaceReading(
                Take(0, new MoistAir(cool, RelativeHumidity.FromPercent(50)), new MoistAir(cool, RelativeHumidity.FromPercent(99))),
                Pick(1, cool, Temperature.FromDegreesCelsius(90)),
                Pick(2, Temperature.FromDegreesCelsius(40), Temperature.FromDegreesCelsius(95)),
                Pick(3, SurfaceWetness.Dry, SurfaceWetness.Damp),
                Pick(4, Duration.FromHours(12), Duration.FromMinutes(10)),
                Pick(5, Duration.FromHours(12), Duration.FromMinutes(10)),
                Pick(6, CleaningGrade.Sa2Half, CleaningGrade.Sa1),
                null,
                Take(8, new DustRating(1, 2), new DustRating(4, 4)),
                how[9] switch { 0 => null, 1 => [], _ => [SurfaceResidue.Wax] },
                Pick(10, AreaDensity.FromMilligramsPerSquareMeter(20), AreaDensity.FromMilligramsPerSquareMeter(80)),
                Take(7, new SurfaceProfile(Length.FromMicrometers(50), ProfileComparator.Grit), new SurfaceProfile(Length.FromMicrometers(160), ProfileComparator.Grit)),
                Pick(11, PaintSoundness.Bare, PaintSoundness.Loose)),
            RuleSet.Default,
            "A-1").Verdict;
    }
}
