using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>Painted lines whose contact windows are laid out by the library or stated at their places.</summary>
public class WindowTests
{
    private const string Head = "line,shape,along_mm,around_mm,length_mm,width_mm\n";

    [Theory]
    [InlineData("A-1,square,500,0,80,50", "column 2 'shape'", "'square' is not one of disc, rectangle")]
    [InlineData("A-1,disc,500,0,80,50", "column 6 'width_mm'", "A disc has one measure")]
    [InlineData("A-1,rectangle,500,0,80,", "column 6 'width_mm'", "empty")]
    [InlineData("A-1,rectangle,500,0,0,50", "column 5 'length_mm'", "0 mm is outside the accepted range")]
    [InlineData("A-1,rectangle,\"500,5\",0,80,50", "column 3 'along_mm'", "comma")]
    [InlineData("A-7,rectangle,500,0,80,50", "column 1 'line'", "No line 'A-7' of the survey has 'places'")]
    public void A_bad_window_is_named_with_file_line_and_column(string window, string place, string says)
    {
        using SurveyFolder survey = Painted("places", $"A-1,rectangle,500,0,80,50\n{window}\n");

        (int code, string output, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Empty(output);
        Assert.Contains($"windows.csv, line 3, {place}", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A-1,rectangle,20500,0,80,50", "Window 1")]
    [InlineData("A-1,rectangle,500,0,80,50\nA-1,rectangle,510,0,80,50", "overlap")]
    [InlineData("A-2,rectangle,500,0,80,50", "windows.csv holds no window of this line")]
    public void Windows_that_do_not_fit_the_line_are_refused_at_its_cell(string windows, string says)
    {
        using SurveyFolder survey = Painted("places", windows + "\n");

        (int code, _, string errors) = survey.Run();

        Assert.Equal(1, code);
        Assert.Contains("lines.csv, line 2, column 9 'windows'", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Windows_at_places_have_no_size_in_the_sheet_of_lines()
    {
        using var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.With("windows", "plan").Replace("plan,,", "plan,40,", StringComparison.Ordinal)}\n");

        Assert.Contains("column 10 'window_cm2': Windows of 'plan' have their own sizes", survey.Run().Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_planned_line_passes_its_checks_of_place_and_tells_the_crew_where()
    {
        using SurveyFolder survey = Painted("plan", null);

        (int code, string output, string errors) = survey.Run();

        Assert.True(code == 0, errors);
        Assert.DoesNotContain("worst square metre", output, StringComparison.Ordinal);
        Assert.DoesNotContain("positions", output, StringComparison.Ordinal);
        Assert.Contains("Mark and bare", survey.Run("--crew", "A-1").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_few_windows_are_found_in_the_worst_square_metre_and_told_as_data()
    {
        using SurveyFolder survey = Painted("places", "A-1,rectangle,500,0,80,50\n");

        Assert.Contains("Bare steel under the tape in the worst square metre", survey.Run().Output, StringComparison.Ordinal);
        Assert.Contains("\"worstMetreCm2PerM2\": 0,", survey.Run("--json").Output, StringComparison.Ordinal);
    }

    private static SurveyFolder Painted(string cell, string? windows)
    {
        var survey = new SurveyFolder();
        survey.Write("lines.csv", $"{SurveyFolder.Header}\n{SurveyFolder.With("windows", cell)}\n");
        if (windows is not null)
        {
            survey.Write("windows.csv", Head + windows);
        }

        return survey;
    }
}
