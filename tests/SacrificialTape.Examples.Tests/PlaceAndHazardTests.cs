using System.Text.Json;
using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>Places known by more than a category, hazards round a line, and how sure its life is.</summary>
public class PlaceAndHazardTests
{
    private const string PlaceHeader = "name,kind,category,degC,rh_percent,so2_mg_m2_d,cl_mg_m2_d,lost_g,area_cm2,hours,lost_g_u,area_cm2_u,lost_um,years,place,s";

    [Theory]
    [InlineData("yard,wind,,,,,,,,,,,,,,", "column 2 'kind'", "'wind' is not one of category, climate, coupon, thickness, water, soil, indoor")]
    [InlineData(",category,C3,,,,,,,,,,,,,", "column 1 'name'", "empty")]
    [InlineData("C3,category,C3,,,,,,,,,,,,,", "column 1 'name'", "'C3' is a word of the exposure column already")]
    [InlineData("measured,category,C3,,,,,,,,,,,,,", "column 1 'name'", "take another name")]
    [InlineData("yard,category,C9,,,,,,,,,,,,,", "column 3 'category'", "'C9' is not one of C1")]
    [InlineData("yard,category,,,,,,,,,,,,,,", "column 3 'category'", "empty")]
    [InlineData("yard,category,C3,12,,,,,,,,,,,,", "column 4 'degC'", "An exposure of kind 'category' has none")]
    [InlineData("yard,climate,,,75,6,35,,,,,,,,,", "column 4 'degC'", "empty")]
    [InlineData("yard,climate,,1200,75,6,35,,,,,,,,,", "column 4 'degC'", "1200 degC is outside")]
    [InlineData("yard,climate,,12,175,6,35,,,,,,,,,", "column 5 'rh_percent'", "175 % is outside")]
    [InlineData("yard,climate,,12,75,-6,35,,,,,,,,,", "column 6 'so2_mg_m2_d'", "-6 mg/(m2.d) is outside")]
    [InlineData("yard,climate,,12,75,6,-1,,,,,,,,,", "column 7 'cl_mg_m2_d'", "-1 mg/(m2.d) is outside")]
    [InlineData("yard,climate,,12,75,6,35,,,,,,,,,0.4", "column 16 's'", "The spread comes with the function")]
    [InlineData("yard,coupon,,,,,,0.357,0,8760,,,,,,", "column 9 'area_cm2'", "more than 0 cm2")]
    [InlineData("yard,coupon,,,,,,0.357,250,-1,,,,,,", "column 10 'hours'", "more than 0 h")]
    [InlineData("yard,coupon,,,,,,-0.3,250,8760,,,,,,", "column 8 'lost_g'", "at least 0 g")]
    [InlineData("yard,coupon,,,,,,0.357,250,8760,0.004,,,,,", "column 12 'area_cm2_u'", "State both uncertainties, or neither.")]
    [InlineData("yard,coupon,,,,,,0.357,250,8760,0.004,-2,,,,", "column 12 'area_cm2_u'", "at least 0 cm2")]
    [InlineData("yard,coupon,,,,,,0.357,250,8760,0.004,2.5,,,,0.3", "column 16 's'", "bounds are read as quantiles")]
    [InlineData("yard,thickness,,,,,,,,,,,14,0,,", "column 14 'years'", "more than 0")]
    [InlineData("yard,thickness,,,,,,,,,,,14,8,,0.001", "column 16 's'", "outside the accepted range")]
    [InlineData("yard,thickness,,,,,,,,,,,14,8,,-1", "column 16 's'", "outside the accepted range")]
    [InlineData("yard,water,,,,,,,,,,,,,mud,", "column 15 'place'", "'mud' is not one of sea")]
    [InlineData("yard,soil,,,,,,,,,,,,,clay,", "column 15 'place'", "'clay' is not one of reinforced fill, power law")]
    [InlineData("yard,indoor,,,,,,,,,,,,,IC6,", "column 15 'place'", "'IC6' is not one of heated and clean")]
    [InlineData("yard,indoor,,,,,,,,,,,,,unheated,\nyard,category,C3,,,,,,,,,,,,,", "column 1 'name'", "'yard' stands twice.")]
    public void A_bad_place_is_named_with_file_line_and_column(string rows, string place, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("exposures.csv", $"{PlaceHeader}\n{rows}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        int line = 1 + rows.Split('\n').Length;
        Assert.Contains($"exposures.csv, line {line}, {place}", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_names_a_faulty_place_is_not_blamed_as_well()
    {
        using var survey = new SurveyFolder();
        survey.Write("exposures.csv", $"{PlaceHeader}\nyard,category,C9,,,,,,,,,,,,,\n");
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.With("exposure", "yard")}\n");

        (_, _, string errors) = survey.Run();

        Assert.Contains("1 fault(s).", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_that_is_not_there_is_named_beside_those_that_are()
    {
        using var survey = new SurveyFolder();
        survey.Write("exposures.csv", $"{PlaceHeader}\nyard,category,C3,,,,,,,,,,,,,\n");
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.With("exposure", "roof")}\n");

        (int code, _, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Contains("lines.csv, line 2, column 13 'exposure': 'roof' is not one of C1, C2, C3, C4, C5, CX, measured, yard.", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hazards", "lightning", "'lightning' is not one of reversing water")]
    [InlineData("hazards", "copper; copper", "'copper' stands twice")]
    [InlineData("ph", "15", "15")]
    [InlineData("strength_MPa", "9", "9 MPa is outside")]
    [InlineData("hardness_HV", "-1", "outside the accepted range")]
    [InlineData("steel_mm", "0", "more than 0 mm")]
    public void A_bad_hazard_is_named_with_its_cell(string column, string cell, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header},{column}\n{SurveyFolder.GoodLine},{cell}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains($"lines.csv, line 2, column 27 '{column}'", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("laid", "15.9.2026", "'15.9.2026' is not a day such as 2026-05-04.")]
    [InlineData("below_bounds", "0.5", "0.5 is not more than 0 and less than 0.5.")]
    [InlineData("growth", "cubic", "'cubic' is not one of linear, power")]
    [InlineData("usable_low", "0.9", "outside the accepted range")]
    [InlineData("usable_high", "0.7", "outside the accepted range")]
    [InlineData("plan_confidence", "1", "1 is not more than 1E-06 and less than 0.999999.")]
    public void A_bad_choice_for_lives_is_named(string column, string cell, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("choices.csv", $"job,end_lap_mm,hand_wander_mm,splice_lap_mm,shortest_piece_m,contingency_percent,{column}\nTest,25,2,50,1,5,{cell}\n");

        (int code, _, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Contains($"choices.csv, line 2, column 7 '{column}'", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    // 0.357 g of 250 cm2 in 8760 h is 2 um/a, 3 % to each side: zinc 0.8 x 76 um at 2.06 um/a.
    [Fact]
    public void A_place_known_by_a_coupon_agrees_with_arithmetic_by_hand()
    {
        JsonElement line = Line("CW-309");

        Assert.Equal("cooling tower", line.GetProperty("exposure").GetString());
        Assert.Equal("coupon", line.GetProperty("exposureKind").GetString());
        double off = 2 * Math.Sqrt(Math.Pow(0.004 / 0.357, 2) + Math.Pow(2.5 / 250, 2));
        Assert.Equal(0.8 * 76 / (2 * (1 + off)), line.GetProperty("earliestYears").GetDouble(), 9);
        Assert.Equal("linear", line.GetProperty("earliestLaw").GetString());
    }

    // Fill: 14.958 um/a for two years, then 3.846; zinc 0.8 x 192.
    [Fact]
    public void A_place_in_soil_lives_by_the_law_of_its_soil()
    {
        Assert.Equal(2 + ((153.6 - (2 * 14.9584)) / 3.84645), Line("EM-801").GetProperty("earliestYears").GetDouble(), 3);
        Assert.Equal(Math.Pow(153.6 / 25.0, 1 / 0.65), Line("EM-802").GetProperty("earliestYears").GetDouble(), 9);
        Assert.Contains("exposure.soil-constants", Rules("EM-802"));
        Assert.Contains("exposure.immersed", Rules("SU-803"));
        Assert.Contains("exposure.indoor-example", Rules("IN-603"));
        Assert.Contains("exposure.indoor", Rules("IN-605"));
        Assert.Contains("exposure.first-year-tolerance", Rules("TK-321"));
        Assert.Contains("exposure.recalled-rate", Rules("YD-506"));
    }

    [Theory]
    [InlineData("BR-101", "hazard.copper-earthing", "CopperEarthing")]
    [InlineData("SW-204", "hazard.sheltered-underside", "ShelteredUnderside")]
    [InlineData("YD-504", "hazard.stray-current", "StrayCurrent")]
    [InlineData("AC-704", "hazard.acid.stop", null)]
    public void A_hazard_speaks_and_takes_the_life_away(string tag, string rule, string? hazard)
    {
        Assert.Contains(rule, Rules(tag));
        Assert.False(Line(tag).GetProperty("lifeHolds").GetBoolean());
        string[] hazards = [.. Line(tag).GetProperty("hazards").EnumerateArray().Select(static one => one.GetString()!)];
        Assert.True(hazard is null ? hazards.Length == 0 : hazards.Contains(hazard));
    }

    [Fact]
    public void Strong_and_hard_steel_speaks()
    {
        string[] rules = Rules("BO-804");
        Assert.Contains(rules, static rule => rule.Contains("strength", StringComparison.Ordinal));
        Assert.Contains(rules, static rule => rule.Contains("hardness", StringComparison.Ordinal));
    }

    // C4 linear, one layer of 100 +- 5 um: the chance is ordered, and nine in ten lie between earliest and median.
    [Fact]
    public void Percentiles_are_ordered_and_the_plan_goes_by_the_calendar()
    {
        JsonElement life = Line("BR-104").GetProperty("lifeSpread");
        double[] years = [.. life.GetProperty("reached").EnumerateArray().Select(static one => one.GetProperty("years").GetDouble())];

        Assert.Equal(years.Order(), years);
        Assert.InRange(years[3], 0.78 * 95 / 2.97, 0.8 * 105 / 2.96);
        Assert.InRange(life.GetProperty("chanceOfRequired").GetDouble(), 0.98, 1);
        double twoThirds = life.GetProperty("twoThirdsLeftYears").GetDouble();
        Assert.Equal(years[2] / 3, twoThirds, 6);
        Assert.Equal(2 * years[2] / 3, life.GetProperty("oneThirdLeftYears").GetDouble(), 6);
        Assert.Equal(
            new DateOnly(2026, 9, 15).AddDays((int)(twoThirds * 365)),
            DateOnly.Parse(life.GetProperty("twoThirdsLeftOn").GetString()!, System.Globalization.CultureInfo.InvariantCulture));
        JsonElement beside = life.GetProperty("hotDip");
        Assert.Equal(85, beside.GetProperty("coatingUm").GetDouble());
        Assert.InRange(beside.GetProperty("tapeIsWorthUm").GetDouble(), 0.7 * 95, 0.9 * 105);
    }

    [Fact]
    public void The_life_tables_name_every_line_and_say_what_they_rest_on()
    {
        string text = ShippedSurvey.Run("--life");
        using JsonDocument data = ShippedSurvey.Data();
        foreach (JsonElement line in data.RootElement.GetProperty("lines").EnumerateArray())
        {
            Assert.Contains("|" + line.GetProperty("line").GetString(), text, StringComparison.Ordinal);
            bool spread = line.GetProperty("lifeSpread").ValueKind == JsonValueKind.Object;
            Assert.NotEqual(spread, line.GetProperty("noLifeSpreadBecause").ValueKind == JsonValueKind.String);
        }

        Assert.Contains("a judgement", text, StringComparison.Ordinal);
        Assert.Contains("No published life of foil on adhesive was found", text, StringComparison.Ordinal);
        Assert.Contains("one rate without a spread: state s: YD-501", text, StringComparison.Ordinal);
        Assert.Contains("2026-09-15", text, StringComparison.Ordinal);
        Assert.DoesNotContain("…", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_day_of_laying_the_plan_is_in_years()
    {
        using var survey = new SurveyFolder();

        (int code, string output, _) = survey.Run("--life");

        Assert.Equal(0, code);
        Assert.Contains("no day of laying in choices.csv", output, StringComparison.Ordinal);
        Assert.DoesNotContain("20" + "26-", output, StringComparison.Ordinal);
    }

    private static string[] Rules(string tag) =>
        [.. Line(tag).GetProperty("findings").EnumerateArray().Select(static finding => finding.GetProperty("rule").GetString()!)];

    private static JsonElement Line(string tag)
    {
        using JsonDocument data = ShippedSurvey.Data();
        return data.RootElement.GetProperty("lines").EnumerateArray().Single(one => one.GetProperty("line").GetString() == tag).Clone();
    }
}
