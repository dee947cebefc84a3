using System.Globalization;
using System.Text.Json;
using Xunit;

namespace SacrificialTape.Examples.Tests;

public class ShippedSurveyTests
{
    [Fact]
    public void It_holds_what_the_readme_promises()
    {
        using JsonDocument data = JsonDocument.Parse(ShippedSurvey.Run("--json"));
        JsonElement lines = data.RootElement.GetProperty("lines");

        Assert.True(lines.GetArrayLength() >= 40);
        Assert.True(lines.EnumerateArray().Select(static line => line.GetProperty("exposure").GetString()).Distinct().Count() >= 3);
        Assert.Contains(lines.EnumerateArray(), static line => line.GetProperty("bareCm2PerM2").ValueKind == JsonValueKind.Number);
        Assert.True(lines.EnumerateArray().Count(static line => Severities(line).Contains("Stop")) >= 2);
        Assert.Contains("invented", data.RootElement.GetProperty("job").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_closes_and_holds_every_strip()
    {
        using JsonDocument data = JsonDocument.Parse(ShippedSurvey.Run("--json"));
        double needed = 0;
        foreach (JsonElement stock in data.RootElement.GetProperty("order").EnumerateArray())
        {
            double parts = Metres(stock, "coverM") + Metres(stock, "lapM") + Metres(stock, "trimM");
            needed += parts;
            Assert.Equal(
                Metres(stock, "boughtM"),
                parts + Metres(stock, "spliceM") + Metres(stock, "contingencyM") + Metres(stock, "offcutM"),
                9);
        }

        double strips = data.RootElement.GetProperty("lines").EnumerateArray()
            .SelectMany(static line => line.GetProperty("strips").EnumerateArray())
            .Sum(static strip => strip.GetProperty("count").GetInt32() * strip.GetProperty("lengthM").GetDouble());
        Assert.Equal(strips, needed, 6);
    }

    // BR-104: 219.1 mm pipe, 100 mm strip, marks 80 mm apart. tan(theta) = 80 / (pi 219.1); strip h / sin + w / tan.
    [Fact]
    public void A_line_of_the_lay_sheet_agrees_with_arithmetic_by_hand()
    {
        using JsonDocument data = JsonDocument.Parse(ShippedSurvey.Run("--json"));
        JsonElement line = data.RootElement.GetProperty("lines").EnumerateArray()
            .Single(static one => one.GetProperty("line").GetString() == "BR-104");
        double tangent = 80 / (Math.PI * 219.1);
        double theta = Math.Atan(tangent);

        Assert.Equal(theta * 180 / Math.PI, line.GetProperty("angleDeg").GetDouble(), 9);
        Assert.Equal(80, line.GetProperty("markMm").GetDouble(), 9);
        JsonElement spiral = line.GetProperty("strips").EnumerateArray().Single(static strip => strip.GetProperty("purpose").GetString() == "Spiral");
        Assert.Equal((35.2 / Math.Sin(theta)) + (0.1 / tangent), spiral.GetProperty("lengthM").GetDouble(), 6);
        Assert.Equal(0.8 * 95 / 4.2, line.GetProperty("earliestYears").GetDouble(), 9);
    }

    [Fact]
    public void The_tables_name_every_line_and_every_rule_that_speaks()
    {
        string tables = ShippedSurvey.Run();
        using JsonDocument data = JsonDocument.Parse(ShippedSurvey.Run("--json"));
        foreach (JsonElement line in data.RootElement.GetProperty("lines").EnumerateArray())
        {
            Assert.Contains("|" + line.GetProperty("line").GetString(), tables, StringComparison.Ordinal);
            foreach (JsonElement finding in line.GetProperty("findings").EnumerateArray())
            {
                Assert.Contains(finding.GetProperty("rule").GetString()!, tables, StringComparison.Ordinal);
            }
        }
    }

    // BR-152: 45 deg of 168.3 mm pipe at a radius of 229 mm, 40 mm strip, 12 mm lap held on the outside.
    [Fact]
    public void A_bend_of_the_lay_sheet_agrees_with_arithmetic_by_hand()
    {
        using JsonDocument data = JsonDocument.Parse(ShippedSurvey.Run("--json"));
        JsonElement line = data.RootElement.GetProperty("lines").EnumerateArray()
            .Single(static one => one.GetProperty("line").GetString() == "BR-152");
        double outside = (229 + 84.15) * Math.PI / 4;
        double rings = Math.Ceiling((outside + 12) / (40 - 12));

        Assert.Equal(0.1683 * Math.PI * 0.229 * Math.PI / 4, line.GetProperty("areaM2").GetDouble(), 12);
        JsonElement ring = line.GetProperty("strips").EnumerateArray().Single(static strip => strip.GetProperty("purpose").GetString() == "Ring");
        Assert.Equal(rings, ring.GetProperty("count").GetInt32());
        Assert.Equal(((rings * 40) - outside) / (rings + 1), line.GetProperty("trueLapMm").GetDouble(), 9);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-FR")]
    [InlineData("tr-TR")]
    public void The_culture_of_the_machine_changes_nothing(string culture)
    {
        string here = ShippedSurvey.Run() + ShippedSurvey.Run("--json") + ShippedSurvey.Run("--workings", "PA-404") + ShippedSurvey.Run("--crew", "PA-404");
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(here, ShippedSurvey.Run() + ShippedSurvey.Run("--json") + ShippedSurvey.Run("--workings", "PA-404") + ShippedSurvey.Run("--crew", "PA-404"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Crew_steps_come_in_working_order()
    {
        string[] steps = [.. ShippedSurvey.Run("--crew", "PA-404").Split('\n').Skip(1).Where(static line => line.Length > 0).Select(static line => line.Split(' ')[1].TrimEnd(':'))];

        Assert.Equal(["Clean", "Windows", "Welds", "Lay", "RollDown", "Look"], steps);
    }

    [Theory]
    [InlineData("ST-702", "Do not tape this line")]
    [InlineData("HW-701", "Do not rely on zinc here")]
    public void The_crew_of_a_line_that_stops_is_told_to_stop_and_nothing_else(string tag, string says)
    {
        string[] steps = [.. ShippedSurvey.Run("--crew", tag).TrimEnd('\n').Split('\n').Skip(1)];

        Assert.StartsWith("1. Stop: Do not begin.", Assert.Single(steps), StringComparison.Ordinal);
        Assert.Contains(says, steps[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_crew_is_told_of_a_second_pass() => Assert.Contains(
        "Do all this 2 times, one pass over the other", ShippedSurvey.Run("--crew", "YD-505"), StringComparison.Ordinal);

    [Fact]
    public void An_unknown_line_is_said_to_be_unknown()
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();

        Assert.Equal(2, PlantSurvey.SurveyProgram.Run(["--crew", "XX-1"], output, errors));
        Assert.Contains("no line 'XX-1'", errors.ToString(), StringComparison.Ordinal);
    }

    private static IEnumerable<string?> Severities(JsonElement line) =>
        line.GetProperty("findings").EnumerateArray().Select(static finding => finding.GetProperty("severity").GetString());

    private static double Metres(JsonElement stock, string name) => stock.GetProperty(name).GetDouble();

    [Fact]
    public void The_pack_is_one_page_with_every_line_and_its_cost()
    {
        string page = ShippedSurvey.Run("--pack");
        using JsonDocument data = ShippedSurvey.Data();

        Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
        Assert.All(data.RootElement.GetProperty("lines").EnumerateArray(), line => Assert.Contains($"<th scope=\"row\">{line.GetProperty("line").GetString()}</th>", page, StringComparison.Ordinal));
        Assert.Contains(data.RootElement.GetProperty("cost").GetProperty("total").GetDecimal().ToString("N2", CultureInfo.InvariantCulture), page, StringComparison.Ordinal);
    }
}
