using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A document keeps the units its author used, also when lines are added or taken away.</summary>
public sealed class UnitsAsGiven
{
    private static readonly string Given = FaultyJobs.Whole
        .Replace("\"168.3 mm\"", "\"6.625 in\"", StringComparison.Ordinal)
        .Replace("\"leastLap\": \"15 mm\"", "\"leastLap\": \"1.5cm\"", StringComparison.Ordinal)
        .Replace("\"100 um\"", "\"0.1 mm\"", StringComparison.Ordinal)
        .Replace("\"20 a\"", "\"175200 h\"", StringComparison.Ordinal)
        .Replace("\"0.05\"", "\"5 %\"", StringComparison.Ordinal);

    [Fact]
    public void What_is_read_is_written_again_in_its_units()
    {
        JobDocument read = JobDocument.Read(Given);
        Assert.Equal(Given.Replace("1.5cm", "1.5 cm", StringComparison.Ordinal), read.Write());
        Assert.Contains(new GivenMeasure("$.lines['BR-101'].lay.leastLap", Measure.Parse("1.5 cm")), read.Given);
        Assert.Equal(read, JobDocument.Read(read.Write()));
    }

    [Fact]
    public void A_line_keeps_its_units_where_it_moves_and_only_where_its_number_stays()
    {
        JobDocument read = JobDocument.Read(Given);
        SurveyLine first = read.Job.Lines[0];
        var changed = new SurveyLine("BR-101", new RingLay(Make.Pipe(), first.Lay.Stock, Make.Mm(15), Make.Choices()), first.Exposure, first.RequiredLife);
        string text = new JobDocument(new Job(read.Job.Name, [read.Job.Lines[1], changed], read.Job.TakeOff), given: read.Given).Write();
        Assert.Contains("6.625 in", text[..text.IndexOf("BR-101", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.DoesNotContain("6.625 in", text[text.IndexOf("BR-101", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.Contains("\"outsideDiameter\": \"168.3 mm\"", text, StringComparison.Ordinal);
        Assert.Contains("\"leastLap\": \"1.5 cm\"", text, StringComparison.Ordinal);
    }
}
