using System.Text.Json;
using SacrificialTape.Documents;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>Loss laws of a line, and rules that a host judges by, there and back.</summary>
public sealed class LawsAndRulesInFiles
{
    private const string Id = "crew.pieces.maximum";

    private static readonly Rule Most = new(
        Id, "Pieces on a line", RuleKind.Maximum, new Measure(5, TradeUnit.One), Severity.Warning, Basis.Judgement("made up"), "Ask for a second crew.");

    private static readonly RuleSet Set = RuleSet.Default.With("with a rule of its own", "1", Most);

    public static TheoryData<int> EveryLaw => [.. Enumerable.Range(0, Laws.Length)];

    private static ILossLaw[] Laws =>
    [
        LinearLoss.Law, PowerLawLoss.ZincMean, PowerLawLoss.ZincUpper, PowerLawLoss.SteelMean, PowerLawLoss.SteelUpper, PowerLawLoss.ZincInSoil, PowerLawLoss.SteelInSoil,
        new PowerLawLoss(TimeExponent.FromValue(2.0 / 3)), PiecewiseLoss.ZincInReinforcedSoil,
        new PiecewiseLoss("wet and dry", [new RatePeriod(CorrosionRate.FromMicrometersPerYear(1.0 / 3), Duration.FromYears365(1.7))], CorrosionRate.FromMicrometersPerYear(0.1), Basis.Judgement("invented")),
        Curve(CurveInterpolation.Linear, CurveEnd.Refuse), Curve(CurveInterpolation.MonotoneCubic, CurveEnd.EndTangent), Curve(CurveInterpolation.Linear, CurveEnd.LastChord),
        new OwnLaw(0.3),
    ];

    [Theory]
    [MemberData(nameof(EveryLaw))]
    public void A_law_comes_back_as_it_went(int law)
    {
        JobDocument document = Document(laws: [Laws[law], LinearLoss.Law]);
        string text = document.Write(AnyJob.Forms);

        JobDocument read = AnyJob.Read(text);

        Assert.Equal([Laws[law], LinearLoss.Law], read.Job.Lines[0].Laws);
        Assert.Equal(Laws[law].Name, read.Job.Lines[0].Laws![0].Name);
        Assert.Equal(document, read);
        Assert.Equal(text, read.Write(AnyJob.Forms));
        using var json = JsonDocument.Parse(text);
        Assert.Equal(Laws[law] is not OwnLaw, JobSchema.Published.Evaluate(json.RootElement).IsValid); // kinds of a host are not in the schema
    }

    [Fact]
    public void Every_law_of_the_library_has_a_form()
    {
        string[] laws = [.. typeof(ILossLaw).Assembly.GetTypes()
            .Where(static type => typeof(ILossLaw).IsAssignableFrom(type) && type is { IsInterface: false, IsAbstract: false, IsPublic: true })
            .Select(static type => type.Name).Order(StringComparer.Ordinal)];

        Assert.Equal(laws, DocumentForms.Library.LossLaws.Types.Select(static type => type.Name).Order(StringComparer.Ordinal));
        Assert.Equal(laws, Laws.Select(static law => law.GetType().Name).Where(static name => name != nameof(OwnLaw)).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_law_without_a_form_is_refused_when_it_is_written()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(static () => Document(laws: [new OwnLaw(0.3)]).Write());

        Assert.Contains("a loss law of type OwnLaw", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"kind\": \"cubic\"", "No loss law of kind 'cubic' is known here")]
    [InlineData("\"kind\": \"power law\", \"name\": \"brass\"", "'brass' is not known")]
    [InlineData("\"kind\": \"power law\", \"exponent\": \"7\"", "outside the accepted range")]
    [InlineData("\"kind\": \"linear\", \"rate\": \"1 um/a\"", "'rate' is not known here")]
    public void A_bad_law_is_a_fault_at_its_place(string law, string says)
    {
        string text = Document(laws: [LinearLoss.Law]).Write().Replace("\"kind\": \"linear\"", law, StringComparison.Ordinal);

        DocumentException refused = Assert.Throws<DocumentException>(() => JobDocument.Read(text));

        DocumentFault fault = Assert.Single(refused.Faults);
        Assert.StartsWith("$.lines[0].laws[0]", fault.Path, StringComparison.Ordinal);
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
    }

    // The code cannot stand in a file: written without it in the forms it would be lost, read with it it judges again.
    [Fact]
    public void A_rule_of_a_host_goes_there_and_back_with_its_code_in_the_forms()
    {
        var code = new FewPieces();
        JobDocument document = Document(rules: Set, own: [code]);
        var forms = new DocumentForms(ownRules: [code]);

        Assert.Contains($"judges by the rule '{Id}'", Assert.Throws<ArgumentException>(() => document.Write()).Message, StringComparison.Ordinal);
        JobDocument read = JobDocument.Read(document.Write(forms), [Set], forms);

        Assert.Equal(document, read);
        Assert.Equal(document.Job.Estimate().Findings, read.Job.Estimate().Findings);
        Assert.Contains(read.Job.Estimate().Findings, static finding => finding.Rule.Id == Id);
    }

    [Fact]
    public void Code_for_a_rule_that_the_file_lacks_does_not_judge()
    {
        JobDocument read = JobDocument.Read(Document().Write(), null, new DocumentForms(ownRules: [new FewPieces()]));

        Assert.Empty(read.Job.OwnRules);
    }

    private static MeasuredLoss Curve(CurveInterpolation interpolation, CurveEnd end) => new(
        [new LossPoint(Duration.FromYears365(1), Length.FromMicrometers(1.0 / 3)), new LossPoint(Duration.FromYears365(2.5), Length.FromMicrometers(0.9)), new LossPoint(Duration.FromYears365(7), Length.FromMicrometers(2))],
        interpolation, end, Basis.OwnExperience("invented readings"));

    private static JobDocument Document(ValueList<ILossLaw>? laws = null, RuleSet? rules = null, ValueList<IOwnRule>? own = null) => new(new Job(
        "job",
        [new SurveyLine(
            new LineNeeds("A-1", ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(5)), laws: laws), new RingLay(Pipe(), Stock(), Mm(20)))],
        Make.TakeOff(), rules, own));

    private sealed record FewPieces : IOwnRule
    {
        public string RuleId => Id;

        public IEnumerable<Finding> Judge(Rule rule, SurveyLine line, LifeEstimate life) =>
            rule.Judge(new Measure(line.Lay.Strips.Sum(static strip => strip.Count), TradeUnit.One), line.Tag) is { } finding ? [finding] : [];
    }
}
