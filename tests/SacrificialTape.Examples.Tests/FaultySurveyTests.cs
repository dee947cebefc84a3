using Xunit;

namespace SacrificialTape.Examples.Tests;

public class FaultySurveyTests
{
    [Theory]
    [InlineData("length_m", "\"20,5\"", "column 4 'length_m'", "comma")]
    [InlineData("length_m", "-20", "column 4 'length_m'", "-20 m is outside the accepted range: more than 0 and at most 1000000 m")]
    [InlineData("length_m", "0", "column 4 'length_m'", "more than 0")]
    [InlineData("length_m", "", "column 4 'length_m'", "empty")]
    [InlineData("length_m", "long", "column 4 'length_m'", "'long' is not a number")]
    [InlineData("length_m", "NaN", "column 4 'length_m'", "'NaN' is not a number")]
    [InlineData("size", "NPS 4.5", "column 3 'size'", "NPS ' 4.5' is not one of 1/2")]
    [InlineData("size", "DN 65", "column 3 'size'", "ambiguous: 73 mm under ASME B36.10M, 76.1 mm under ISO 4200")]
    [InlineData("size", "4 inch", "column 3 'size'", "not a pipe size")]
    [InlineData("size", "OD 0.1143", "column 3 'size'", "0.1143 mm is outside the accepted range")]
    [InlineData("size", "\"OD 114,3\"", "column 3 'size'", "decimal point")]
    [InlineData("lap_mm", "120", "column 19 'lap_mm'", "lap must be at least 0 and less than the strip is wide")]
    [InlineData("lap_mm", "-5", "column 19 'lap_mm'", "-5 mm is outside the accepted range")]
    [InlineData("exposure", "C6", "column 13 'exposure'", "'C6' is not one of C1, C2, C3, C4, C5, CX, measured")]
    [InlineData("exposure", "measured", "column 14 'rate_um_a'", "needs its first-year zinc rate")]
    [InlineData("rate_um_a", "2", "column 14 'rate_um_a'", "goes with the exposure 'measured' only")]
    [InlineData("life_a", "0", "column 15 'life_a'", "more than 0 a")]
    [InlineData("stock", "Z999", "column 16 'stock'", "'Z999' is not one of Z100")]
    [InlineData("lay", "knitted", "column 17 'lay'", "'knitted' is not one of spiral, rings, along")]
    [InlineData("windows", "30", "column 10 'window_cm2'", "empty")]
    [InlineData("passes", "1.5", "column 21 'passes'", "not a whole number")]
    [InlineData("layers", "0", "column 15 'life_a'", "0 layers is outside the accepted range")]
    [InlineData("service_degC", "600", "column 11 'service_degC'", "600 degC is outside the accepted range")]
    [InlineData("weld_stock", "", "column 26 'weld_stock'", "empty")]
    [InlineData("line", "", "column 1 'line'", "empty")]
    [InlineData("shape", "cone", "column 2 'shape'", "'cone' is not one of pipe, bend")]
    [InlineData("shape", "bend", "column 5 'angle_deg'", "empty")]
    [InlineData("radius_mm", "LR", "column 6 'radius_mm'", "A pipe has none; leave the cell empty.")]
    public void A_bad_cell_is_named_with_file_line_and_column(string column, string cell, string place, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.GoodLine.Replace("A-1", "A-0", StringComparison.Ordinal)}\n{SurveyFolder.With(column, cell)}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains($"lines.csv, line 3, {place}", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decimal_comma_without_quotes_makes_a_column_too_many_and_the_message_guesses_why()
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.With("length_m", "20,5")}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains("lines.csv, line 2: 27 columns instead of 26. Is there a decimal comma?", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pipe_too_short_for_level_turns_is_blamed_on_its_length()
    {
        using var survey = new SurveyFolder();
        string line = SurveyFolder.With("length_m", "0.15").Replace(",flush,", ",level,", StringComparison.Ordinal);
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{line}\n");

        (int code, _, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Contains("lines.csv, line 2, column 4 'length_m': A pipe 150 mm long is too short", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("B-1,bend,NPS 4,,90,LR,level,steel,,,18,no,C4,,15,Z100,along,,15,,1,1,hand,,,", "column 17 'lay'", "'along' is not laid on a bend; rings or a spiral are.")]
    [InlineData("B-1,bend,OD 114.3,,90,LR,level,steel,,,18,no,C4,,15,Z100,rings,,15,,1,1,hand,,,", "column 6 'radius_mm'", "'LR' goes with a nominal size; state the radius in mm.")]
    [InlineData("B-1,bend,NPS 4,,90,50,level,steel,,,18,no,C4,,15,Z100,rings,,15,,1,1,hand,,,", "column 6 'radius_mm'", "more than 57.15 and at most")]
    [InlineData("B-1,bend,NPS 4,,900,LR,level,steel,,,18,no,C4,,15,Z100,rings,,15,,1,1,hand,,,", "column 5 'angle_deg'", "at most 360 deg")]
    [InlineData("B-1,bend,NPS 4,1.5,90,LR,level,steel,,,18,no,C4,,15,Z100,rings,,15,,1,1,hand,,,", "column 4 'length_m'", "A bend has none; leave the cell empty.")]
    [InlineData("B-1,bend,NPS 4,,90,LR,level,steel,,,18,no,C4,,15,Z100,rings,,15,,1,1,hand,,1,Z100", "column 25 'long_welds'", "Welds along are counted on straight pipe")]
    public void A_bad_bend_is_named_with_its_cell(string line, string place, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{line}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains($"lines.csv, line 2, {place}", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_quote_mark_meant_as_inches_swallows_no_line()
    {
        using var survey = new SurveyFolder();
        string second = SurveyFolder.GoodLine.Replace("A-1", "4\"-P-2", StringComparison.Ordinal);
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.GoodLine.Replace("A-1", "6\"-P-1", StringComparison.Ordinal)}\n{second}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains("lines.csv, line 2", errors, StringComparison.Ordinal);
        Assert.Contains("A quote mark opens in this line and closes in line 3", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_roll_too_short_to_splice_is_a_fault_of_the_stock()
    {
        using var survey = new SurveyFolder();
        survey.Write("choices.csv", "job,end_lap_mm,hand_wander_mm,splice_lap_mm,shortest_piece_m,contingency_percent\nTest,25,2,50,1000,5\n");

        (int code, _, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Contains("stock.csv, line 2, column 7 'roll_m': A roll of 50 m is shorter than two of the shortest pieces", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("window_cm2", "40", "column 10 'window_cm2'", "There are no windows")]
    [InlineData("wet", "yes", "column 11 'service_degC'", "state at which temperature")]
    [InlineData("girth_welds", "", "column 26 'weld_stock'", "There are no welds")]
    [InlineData("lay", "rings", "column 18 'lap_by'", "leave the cell empty")]
    public void No_cell_is_passed_over_in_silence(string column, string cell, string place, string says)
    {
        using var survey = new SurveyFolder();
        string line = SurveyFolder.With(column, cell);
        if (column == "wet")
        {
            line = line.Replace(",18,yes", ",,yes", StringComparison.Ordinal);
        }

        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{line}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains($"lines.csv, line 2, {place}", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_of_all_files_come_in_one_run()
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.With("lap_mm", "120")}\n{SurveyFolder.With("size", "DN 7")}\n");
        survey.Write("stock.csv", "stock,foil_um,foil_tolerance_um,adhesive_um,facing_um,width_mm,roll_m\nZ100,100,5,25,,100,50\nZ7,100,5,25,,\"7,5\",50\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains("stock.csv, line 3, column 6 'width_mm'", errors, StringComparison.Ordinal);
        Assert.Contains("lines.csv, line 2, column 19 'lap_mm'", errors, StringComparison.Ordinal);
        Assert.Contains("lines.csv, line 3, column 3 'size'", errors, StringComparison.Ordinal);
        Assert.Contains("lines.csv, line 3, column 1 'line': 'A-1' stands twice", errors, StringComparison.Ordinal);
        Assert.Contains("4 fault(s). Nothing was worked out.", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_column_is_named()
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", SurveyFolder.Header.Replace(",lap_mm", string.Empty, StringComparison.Ordinal) + "\n" + SurveyFolder.GoodLine + "\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains("lines.csv, line 1, column 'lap_mm': The column is missing.", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "lines.csv, line 1: The file is empty.")]
    [InlineData(" \n\n", "lines.csv, line 1: The file is empty.")]
    [InlineData(SurveyFolder.Header + "\n", "lines.csv, line 2: There is no row under the header.")]
    public void An_empty_survey_is_no_survey(string text, string says)
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", text);

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_is_named()
    {
        using var survey = new SurveyFolder();
        survey.Delete("stock.csv");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains("stock.csv: There is no such file", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Contingency_of_a_hundred_percent_or_more_is_refused()
    {
        using var survey = new SurveyFolder();
        survey.Write("choices.csv", "job,end_lap_mm,hand_wander_mm,splice_lap_mm,shortest_piece_m,contingency_percent\nTest,25,2,50,1,500\n");

        (int code, _, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Contains("choices.csv, line 2, column 6 'contingency_percent': 5 is outside the accepted range: at least 0 and less than 1 (a fraction of 1", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--jason")]
    [InlineData("--crew")]
    public void Wrong_arguments_get_the_usage(string option)
    {
        using var survey = new SurveyFolder();

        (int code, string output, string errors) = survey.Run(option);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("--workings LINE", errors, StringComparison.Ordinal);
    }
}
