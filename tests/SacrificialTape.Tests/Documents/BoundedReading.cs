using System.Text;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A short file cannot ask for endless work: it is refused before the work is done.</summary>
public sealed class BoundedReading
{
    private const string Choices = """{ "endLap": "10 mm", "handWander": "0 mm" }""";

    private static readonly DocumentLimits Million = new(1 << 26, 16, 100, 1_000_000);

    public static TheoryData<string> Greedy =>
    [
        // A strip of 1 mm across a plate of 1 km, with openings that each strip is held against.
        Lay("panel", Surface("rectangular panel", "\"width\": \"1000 m\", \"height\": \"1000 m\"" + ", \"openings\": [" + Openings(200) + "]"), "\"direction\": \"along width\", \"leastLap\": \"0 mm\""),
        Lay("edge", Surface("sheet edge", "\"edgeLength\": \"1000 m\", \"thickness\": \"1 mm\", \"frontReach\": \"0 mm\", \"backReach\": \"0 mm\", \"outsideCorners\": 2000000000"), string.Empty),
        Lay("interrupted", Surface("interrupted pipe", $$"""
            "pipe": { "kind": "pipe", "outsideDiameter": "100 mm", "length": "100000 m" },
            "bands": [{{string.Join(',', Enumerable.Repeat("""{ "what": "name plate", "shape": "band", "length": "0.001 mm", "margin": "0 mm", "count": 1000000 }""", 3))}}]
            """), $$""" "everySpan": { "kind": "rings", "stock": "s", "leastLap": "0 mm", "choices": {{Choices}} } """),
        Windows(1500),
        string.Join(',', Enumerable.Repeat(
            Lay("flat head", Surface("flat head", "\"outsideDiameter\": \"100 m\", \"straightFlange\": \"0 mm\""), "\"leastLap\": \"0 mm\""), 2)
            .Select(static (line, i) => line.Replace("\"tag\": \"L\"", FormattableString.Invariant($"\"tag\": \"L{i}\""), StringComparison.Ordinal))),
    ];

    [Theory]
    [MemberData(nameof(Greedy))]
    public void Too_much_work_is_refused(string lines)
    {
        DocumentException refused = Assert.Throws<DocumentException>(() => JobDocument.Read(File(lines), limits: Million));
        Assert.Contains(refused.Faults, static fault => fault.Message.Contains("steps of counting", StringComparison.Ordinal) && fault.Path.StartsWith("$.lines[", StringComparison.Ordinal));
    }

    [Fact]
    public void Whom_one_trusts_may_ask_for_more()
    {
        string text = File(Windows(40));
        var few = new DocumentLimits(1 << 20, 16, 100, 1000);
        Assert.Contains("Divide it, or raise the limit", Assert.Throws<DocumentException>(() => JobDocument.Read(File(Windows(60)), limits: few)).Message, StringComparison.Ordinal);
        Assert.Equal(40, JobDocument.Read(text, limits: few).Job.Lines[0].Needs.Windows!.Windows.Count);
    }

    // What docs/exchange-jobs.md says of a web host: work for strangers ends early, and an ordinary survey of a thousand lines goes through.
    [Fact]
    public void A_web_host_refuses_early_and_takes_a_survey_of_a_thousand_pipes()
    {
        Assert.True(DocumentLimits.WebHost.Bytes < DocumentLimits.Default.Bytes && DocumentLimits.WebHost.Steps < DocumentLimits.Default.Steps);
        JobDocument small = JobDocument.Read(FaultyJobs.Whole);
        SurveyLine pipe = small.Job.Lines[1];
        SurveyLine[] lines = [.. Enumerable.Range(0, 1000).Select(i => new SurveyLine(FormattableString.Invariant($"BR-{i}"), pipe.Lay, pipe.Exposure, pipe.RequiredLife))];
        string text = new JobDocument(new Job("a thousand", lines, small.Job.TakeOff)).Write();
        Assert.Equal(1000, JobDocument.Read(text, limits: DocumentLimits.WebHost).Job.Lines.Count);
        Assert.Contains("steps of counting", Assert.Throws<DocumentException>(() => JobDocument.Read(File(Windows(1500)), limits: DocumentLimits.WebHost)).Message, StringComparison.Ordinal);
    }

    private static string Windows(int count) => Lay("rings", Surface("pipe", "\"outsideDiameter\": \"50 m\", \"length\": \"100 m\""), "\"leastLap\": \"0 mm\"")
        .Replace("\"requiredLife\"", "\"windows\": { \"at\": [" + string.Join(',', Enumerable.Range(0, count).Select(static i => FormattableString.Invariant(
            $$"""{"along":"500 mm","around":"{{3 * i}} mm","diameter":"1 mm"}"""))) + "] }, \"requiredLife\"", StringComparison.Ordinal);

    private static string Openings(int count) => string.Join(',', Enumerable.Range(0, count).Select(static i => FormattableString.Invariant(
        $$"""{"diameter":"1 mm","right":"{{2 * i}} mm","up":"0 mm"}""")));

    private static string Surface(string kind, string members) => $$"""{ "kind": "{{kind}}", {{members}} }""";

    private static string Lay(string kind, string surface, string members) => $$"""
        { "tag": "L", "lay": { "kind": "{{kind}}", "surface": {{surface}}{{(kind == "interrupted" ? string.Empty : ", \"stock\": \"s\", \"choices\": " + Choices)}}{{(members.Length == 0 ? string.Empty : ", " + members)}} },
          "exposure": { "kind": "category", "name": "C3" }, "requiredLife": "20 a" }
        """;

    private static string File(string lines)
    {
        var text = new StringBuilder(FaultyJobs.Whole);
        int from = FaultyJobs.Whole.IndexOf("\"lines\"", StringComparison.Ordinal);
        text.Length = from;
        text.Replace("\"stocks\": [", """
            "stocks": [ { "name": "s", "width": "1 mm", "rollLength": "10 m", "foil": { "thickness": "100 um", "density": "7140 kg/m3" }, "adhesive": { "thickness": "30 um" } },
            """);
        return text.Append("\"lines\": [").Append(lines).Append("] }").ToString();
    }
}
