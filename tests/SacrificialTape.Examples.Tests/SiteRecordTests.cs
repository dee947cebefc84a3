using System.Text.Json;
using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>The log of the site and what was measured on its surfaces.</summary>
public class SiteRecordTests
{
    private const string LogHead = "start,air_degC,rh_percent,surface_degC,rain,wind_m_s\n";

    private const string FirstHour = "2026-05-14T08:00+02:00,15,60,18,no,2\n";

    private const string ReadyHead = "line,air_degC,rh_percent,surface_degC,wetness,dry_h,dwell_h,cleaning,dust,residues,paint,water_ml,patch_mm2,before_uS_cm,after_uS_cm,flash_rust,profile_um,blasted_with\n";

    private const string Clean = "A-1,18,60,20,dry,5,4,St 3,1/2,none,bare,15,1250,3,9,,,";

    [Theory]
    [InlineData("14/05/2026 09:00,15,60,18,no,2", "column 1 'start'", "is not a time such as")]
    [InlineData("2026-05-14T09:00,15,60,18,no,2", "column 1 'start'", "offset must stand with it")]
    [InlineData("2026-05-14T08:30+02:00,15,60,18,no,2", "column 1 'start'", "begins before the one above it has ended")]
    [InlineData("2026-05-14T08:00+02:00,15,60,18,no,2", "column 1 'start'", "begins before the one above it has ended")]
    [InlineData("2026-05-14T07:00+02:00,15,60,18,no,2", "column 1 'start'", "begins before the one above it has ended")]
    [InlineData("2026-05-14T09:00+02:00,15,0.6,18,no,2", "column 3 'rh_percent'", "is it a fraction?")]
    [InlineData("2026-05-14T09:00+02:00,15,,18,no,2", "column 3 'rh_percent'", "State temperature and humidity")]
    [InlineData("2026-05-14T09:00+02:00,,60,18,no,2", "column 2 'air_degC'", "State temperature and humidity")]
    [InlineData("2026-05-14T09:00+02:00,15,60,\"18,5\",no,2", "column 4 'surface_degC'", "comma")]
    [InlineData("2026-05-14T09:00+02:00,15,60,1800,no,2", "column 4 'surface_degC'", "1800 degC is outside")]
    [InlineData("2026-05-14T09:00+02:00,15,60,18,maybe,2", "column 5 'rain'", "'maybe' is not one of yes, no")]
    [InlineData("2026-05-14T09:00+02:00,15,60,18,no,-2", "column 6 'wind_m_s'", "-2 m/s is outside")]
    public void A_bad_hour_is_named_with_file_line_and_column(string hour, string place, string says) =>
        Names("site-log.csv", LogHead + FirstHour + hour + "\n", $"site-log.csv, line 3, {place}", says);

    [Theory]
    [InlineData(0, "A-9", "column 1 'line'", "The survey has no line 'A-9'")]
    [InlineData(3, "1800", "column 4 'surface_degC'", "1800 degC is outside")]
    [InlineData(4, "moist", "column 5 'wetness'", "'moist' is not one of dry, damp, wet")]
    [InlineData(5, "-1", "column 6 'dry_h'", "-1 h is outside")]
    [InlineData(6, "-1", "column 7 'dwell_h'", "-1 h is outside")]
    [InlineData(7, "St 9", "column 8 'cleaning'", "'St 9' is not one of St 2, St 3")]
    [InlineData(8, "1-2", "column 9 'dust'", "not a quantity and a size class")]
    [InlineData(8, "7/2", "column 9 'dust'", "outside the accepted range")]
    [InlineData(9, "none; oil", "column 10 'residues'", "'none' is not one of")]
    [InlineData(9, "tar", "column 10 'residues'", "'tar' is not one of none, oil, wax, silicone, bitumen")]
    [InlineData(10, "old", "column 11 'paint'", "'old' is not one of bare, roughened, smooth, loose")]
    [InlineData(11, "", "column 12 'water_ml'", "salts need water, patch")]
    [InlineData(12, "0", "column 13 'patch_mm2'", "0 mm2 is outside")]
    [InlineData(15, "red", "column 16 'flash_rust'", "'red' is not one of none, light, medium, heavy")]
    [InlineData(16, "40", "column 18 'blasted_with'", "empty")]
    [InlineData(17, "grit", "column 18 'blasted_with'", "There is no profile")]
    public void A_bad_reading_of_a_surface_is_named_with_file_line_and_column(int cell, string text, string place, string says)
    {
        string[] cells = Clean.Split(',');
        cells[cell] = text;
        Names("readiness.csv", ReadyHead + string.Join(',', cells) + "\n", $"readiness.csv, line 2, {place}", says);
    }

    [Fact]
    public void A_clean_dry_surface_is_ready_and_one_cell_that_was_not_read_leaves_it_unsaid()
    {
        using var survey = new SurveyFolder();
        survey.Write("readiness.csv", ReadyHead + Clean + "\n");

        Assert.Contains("|ready", Row(survey.Run("--site").Output, "A-1"), StringComparison.Ordinal);

        survey.Write("readiness.csv", ReadyHead + Clean.Replace("1/2", string.Empty, StringComparison.Ordinal) + "\n");

        string output = survey.Run("--site").Output;
        Assert.Contains("cannot be said", Row(output, "A-1"), StringComparison.Ordinal);
        Assert.Contains("[surface.not-measured]", output, StringComparison.Ordinal);
    }

    // Of four dry hours the first leans on what was before the log, the last on what comes after it.
    [Fact]
    public void Windows_of_work_need_a_known_time_before_and_after()
    {
        using var survey = new SurveyFolder();
        survey.Write("site-log.csv", LogHead + string.Concat(Enumerable.Range(8, 6).Select(static hour => $"2026-05-14T{hour:00}:00+02:00,15,60,18,no,2\n")));

        using JsonDocument data = JsonDocument.Parse(survey.Run("--json").Output);

        // Two hours dry before, one after: of 8 to 14 o'clock 10 to 13 are left.
        JsonElement window = Assert.Single(data.RootElement.GetProperty("site").GetProperty("windows").EnumerateArray());
        Assert.Equal(new DateTimeOffset(2026, 5, 14, 10, 0, 0, TimeSpan.FromHours(2)), window.GetProperty("from").GetDateTimeOffset());
        Assert.Equal(new DateTimeOffset(2026, 5, 14, 13, 0, 0, TimeSpan.FromHours(2)), window.GetProperty("to").GetDateTimeOffset());
    }

    [Fact]
    public void A_survey_without_records_of_the_site_says_so()
    {
        using var survey = new SurveyFolder();

        (int code, string output, string errors) = survey.Run("--site");

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("neither site-log.csv nor readiness.csv", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_has_every_line_and_the_readings_of_its_area()
    {
        using var survey = new SurveyFolder();

        string plan = survey.Run("--plan").Output;

        // 20 m of 114.3 mm pipe are 7.18 m2: up to 10 m2 ISO 19840 takes 15 readings.
        Assert.Contains("Trial patch, bare steel (A-1)", plan, StringComparison.Ordinal);
        Assert.Contains("15 readings on 7.18", plan, StringComparison.Ordinal);
    }

    [Fact]
    public void The_shipped_log_closes_round_rain_and_the_silent_logger()
    {
        using JsonDocument data = ShippedSurvey.Data();
        JsonElement[] windows = [.. data.RootElement.GetProperty("site").GetProperty("windows").EnumerateArray()];
        DateTimeOffset rain = new(2026, 9, 16, 11, 0, 0, TimeSpan.FromHours(2));
        DateTimeOffset silent = new(2026, 9, 15, 22, 0, 0, TimeSpan.FromHours(2));

        Assert.NotEmpty(windows);
        Assert.All(windows, window =>
        {
            DateTimeOffset from = window.GetProperty("from").GetDateTimeOffset();
            DateTimeOffset to = window.GetProperty("to").GetDateTimeOffset();

            // One hour to dwell before the rain and two to dry after it; the same round the hours that nobody read.
            Assert.True(to <= rain.AddHours(-1) || from >= rain.AddHours(3));
            Assert.True(to <= silent.AddHours(-1) || from >= silent.AddHours(4));
        });
    }

    private static void Names(string file, string text, string place, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write(file, text);

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains(place, errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    private static string Row(string output, string line) => output.Split('\n').Single(row => row.StartsWith($"|{line} ", StringComparison.Ordinal));
}
