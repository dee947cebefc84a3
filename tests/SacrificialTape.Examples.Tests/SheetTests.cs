using System.Text.Json;
using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>The sheets of the shipped survey besides lines.csv, against arithmetic by hand.</summary>
public class SheetTests
{
    private const string Common = "run,exposure,life_a,stock,lay,lap_mm";

    [Theory]
    [InlineData("SV-201", Math.PI * ((2400 * 5600) - (305 * 305) - (4 * 109.5 * 109.5)), 0.001)] // openings as if flat
    [InlineData("CG-601", 1160 * 48_000.0, 0.0005)] // area per metre as printed for IPE 300, recalled
    [InlineData("CG-602", 1140 * 36_000.0, 0.005)] // as printed for HEA 200
    [InlineData("TK-301", (2400 * 1800) - (600 * 400), 1e-9)]
    [InlineData("TK-302", Math.PI * ((900 * 900) - (250 * 250)), 1e-9)]
    [InlineData("TK-303", Math.PI * ((600 * 600) - (400 * 400)), 1e-9)]
    [InlineData("TK-311", 18_200.0 * (40 + 6 + 40), 1e-9)]
    [InlineData("SP-322", Math.PI * (203.2 + 136.5) * 1_801.2347, 1e-6)] // slant: sqrt(1800^2 + 66.7^2)
    [InlineData("SP-323", 3.4e6 * 1.25, 1e-9)]
    public void An_area_agrees_with_arithmetic_by_hand(string tag, double mm2, double relative)
    {
        double m2 = Line(tag).GetProperty("areaM2").GetDouble();

        Assert.InRange(m2, mm2 / 1e6 * (1 - relative), mm2 / 1e6 * (1 + relative));
    }

    // Courses 150 mm wide, 15 mm lap, 15 mm past each seam: (5600 + 30 - 15) / 135 = 41.6.
    [Fact]
    public void Courses_of_a_shell_are_counted_as_by_hand()
    {
        JsonElement strips = Line("SV-201").GetProperty("strips");

        Assert.Equal(42, strips.EnumerateArray().Sum(static strip => strip.GetProperty("count").GetInt32()));
    }

    [Fact]
    public void Every_line_is_covered_everywhere_but_the_one_that_was_only_measured()
    {
        using JsonDocument data = ShippedSurvey.Data();
        foreach (JsonElement line in data.RootElement.GetProperty("lines").EnumerateArray())
        {
            Assert.True(line.GetProperty("layersEverywhere").GetInt32() >= 1, line.GetProperty("line").GetString());
        }
    }

    [Fact]
    public void The_cost_is_the_sum_of_its_lines_in_one_currency()
    {
        using JsonDocument data = ShippedSurvey.Data();
        JsonElement cost = data.RootElement.GetProperty("cost");

        Assert.Equal("EUR", cost.GetProperty("currency").GetString());
        Assert.Equal(cost.GetProperty("total").GetDecimal(), cost.GetProperty("lines").EnumerateArray().Sum(static line => line.GetProperty("amount").GetDecimal()));
        string[] kinds = [.. cost.GetProperty("lines").EnumerateArray().Select(static line => line.GetProperty("kind").GetString()!).Distinct()];
        Assert.Equal(6, kinds.Length);
    }

    [Fact]
    public void The_crew_is_told_what_stays_clear_before_it_lays()
    {
        string[] steps = ShippedSurvey.Run("--crew", "SV-201").Split('\n');

        int mark = Array.FindIndex(steps, static step => step.Contains("MarkClear", StringComparison.Ordinal));
        int lay = Array.FindIndex(steps, static step => step.Contains(". Lay:", StringComparison.Ordinal));
        Assert.InRange(mark, 1, lay - 1);
        Assert.Contains("earth bond", steps[mark], StringComparison.OrdinalIgnoreCase);
        Assert.Contains("magnetic roller", string.Join('\n', steps), StringComparison.Ordinal);
    }

    [Fact]
    public void The_cut_list_cuts_what_is_ordered()
    {
        string cuts = ShippedSurvey.Run("--cuts");
        using JsonDocument data = ShippedSurvey.Data();

        foreach (JsonElement stock in data.RootElement.GetProperty("order").EnumerateArray())
        {
            Assert.Contains($"{stock.GetProperty("stock").GetString()}: {stock.GetProperty("rolls").GetInt64()} roll(s)", cuts, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("vessels.csv", "shape,outside_mm,crown_mm,knuckle_mm", "torispherical,1000,1000,600", "level,C4,15,Z100,gores,10", "knuckle_mm", "600 mm")]
    [InlineData("vessels.csv", "shape,outside_mm,inside_mm,wall_mm", "hemispherical,1000,980,10", "level,C4,15,Z100,gores,10", "inside_mm", "keep the one that was measured")]
    [InlineData("vessels.csv", "shape,outside_mm", "hemispherical,", "level,C4,15,Z100,gores,10", "outside_mm", "The cell is empty")]
    [InlineData("vessels.csv", "shape,outside_mm,length_m,axis", "shell,1000,2,askew", "level,C4,15,Z100,rings,10", "axis", "'askew' is not one of upright, lying")]
    [InlineData("panels.csv", "shape,width_mm,height_mm,openings", "rectangle,1000,500,600x700 at 500;250", "level,C4,15,Z100,level,10", "openings", "is not an opening such as")]
    [InlineData("panels.csv", "shape,width_mm,height_mm,openings", "rectangle,1000,500,1200x700", "level,C4,15,Z100,level,10", "openings", "1200")]
    [InlineData("panels.csv", "shape,outside_mm,inside_mm", "ring,800,900", "level,C4,15,Z100,level,10", "inside_mm", "900 mm")]
    [InlineData("panels.csv", "shape,outside_mm,width_mm", "disc,800,900", "level,C4,15,Z100,level,10", "width_mm", "A line of shape 'disc' has none")]
    [InlineData("sections.csv", "shape,size,length_m", "listed,IPE 777,6", "level,C4,15,Z100,outline,10", "size", "'IPE 777' is not known here")]
    [InlineData("sections.csv", "shape,size,length_m", "listed,IPE 300,6", "level,C4,15,Z100,rings,10", "lay", "'rings' is not one of outline, faces")]
    [InlineData("details.csv", "shape,length_m,thickness_mm,front_mm,back_mm", "edge,6,6,60,60", "level,C4,15,Z100,fold,10", "stock", "126 mm")]
    [InlineData("fittings.csv", "shape,size,small", "reducer,NPS 4,NPS 6", "level,C4,15,Z100,strips,10", "small", "168.3 mm")]
    [InlineData("fittings.csv", "shape,size,small", "reducer,OD 114,OD 60", "level,C4,15,Z100,strips,10", "length_mm", "The cell is empty")]
    [InlineData("fittings.csv", "shape,size,joints,angle_deg,radius_mm", "mitred,OD 114,1.5,90,300", "level,C4,15,Z100,rings,10", "joints", "1.5 is not a whole number")]
    [InlineData("fittings.csv", "shape,size", "flange,OD 114", "level,C4,15,Z100,faces,10", "size", "nominal size")]
    public void A_bad_cell_of_a_sheet_is_named(string file, string columns, string cells, string common, string column, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write(file, $"line,{columns},{Common}\nX-1,{cells},{common}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains($"{file}, line 2, column", errors, StringComparison.Ordinal);
        Assert.Contains($"'{column}'", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("BR-104", "strips along")]
    [InlineData("SV-202", "gores")]
    [InlineData("TK-301", "upright")]
    [InlineData("RC-211", "along")]
    public void The_choice_names_a_best_and_says_why_not_the_others(string tag, string lay)
    {
        string[] lines = ShippedSurvey.Run("--choose", tag).Split('\n');

        int rejected = Array.FindIndex(lines, static line => line.StartsWith("Rejected", StringComparison.Ordinal));
        decimal[] costs = [.. lines[1..rejected].Select(static line => decimal.Parse(line.Split("): ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture))];
        Assert.NotEmpty(costs);
        Assert.Equal(costs.Order(), costs);
        Assert.Contains(lay, string.Join('\n', lines), StringComparison.Ordinal);
        Assert.Contains("facing film", string.Join('\n', lines[rejected..]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("name plate", "is not one of isolating joint")]
    [InlineData("door 200x100", "is not one of isolating joint")]
    [InlineData("flanged joint band 30000", "mm")]
    public void What_stays_clear_is_read_strictly(string cell, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header},clear\n{SurveyFolder.GoodLine},{cell}\n");

        (int code, _, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Contains("'clear'", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kind,item,amount,currency\nlabour,fitter,40,EUR\n", "No price is given for a roll of 0.1 x 100 mm")]
    [InlineData("kind,item,amount,currency\nroll,Z100,90,EUR\nlabour,fitter,40,USD\n", "USD")]
    [InlineData("kind,item,amount,currency\nroll,Z100,90,EUR\n", "One row of labour is needed")]
    [InlineData("kind,item,amount,currency\nroll,Z7,90,EUR\nlabour,fitter,40,EUR\n", "'Z7' is not one of Z100")]
    [InlineData("kind,item,amount,currency\nroll,Z100,\"90,50\",EUR\nlabour,fitter,40,EUR\n", "comma")]
    public void Prices_are_not_guessed(string prices, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("prices.csv", prices);
        survey.Write("norms.csv", "lay,method,surface,hours,per\nSpiral,hand,pipe,0.5,m2\nWeld,hand,pipe,0.05,m\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    private static JsonElement Line(string tag)
    {
        using JsonDocument data = ShippedSurvey.Data();
        return data.RootElement.GetProperty("lines").EnumerateArray().Single(one => one.GetProperty("line").GetString() == tag).Clone();
    }
}
