using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

public sealed class VerificationCases
{
    private static readonly VerificationCase Angle = RuleSetDocument.Reference.Cases.Single(static one => one.Id == "spiral-angle-no-lap");

    [Fact]
    public void The_library_agrees_with_its_reference_cases()
    {
        Verification run = RuleSetDocument.Reference.Verify();
        Assert.True(run.Passed, run.ToString());
        Assert.Equal(RuleSetDocument.Reference.Cases.Count, run.Results.Count);
        Assert.EndsWith($"{run.Results.Count} of {run.Results.Count} agree", run.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_calculation_has_a_case_and_every_case_fails_when_its_answer_is_off()
    {
        ValueList<VerificationCase> cases = RuleSetDocument.Reference.Cases;
        Assert.Empty(CaseCalculations.All.Select(static one => one.Id).Except(cases.Select(static one => one.Calculation)));
        Assert.All(cases, static one =>
        {
            var off = new Measure(one.Expected.Number + (3 * one.Tolerance.Number), one.Expected.Unit);
            Assert.False(Verification.Of([new VerificationCase(one.Id, one.Calculation, one.Inputs, off, one.Tolerance, one.Basis)]).Passed, one.Id);
        });
    }

    [Fact]
    public void Inputs_may_be_in_other_units()
    {
        VerificationCase inches = Changed(Angle, "strip width", "5 cm");
        Assert.True(Verification.Of([inches]).Passed);
    }

    [Fact]
    public void A_case_that_cannot_be_asked_does_not_agree_and_says_why()
    {
        Assert.Equal("'strip width' is 50 degC; wanted a unit such as mm; units that do: um, mm, cm, m, in, ft.", Remark(Changed(Angle, "strip width", "50 degC")));
        Assert.Contains("No calculation 'spiral.angel' is known. Nearest is 'spiral.angle'", Remark(new(Angle.Id, "spiral.angel", Angle.Inputs, Angle.Expected, Angle.Tolerance, Angle.Basis)), StringComparison.Ordinal);
        Assert.Contains("missing: true lap", Remark(new(Angle.Id, Angle.Calculation, Angle.Inputs.Where(static value => value.Name != "true lap"), Angle.Expected, Angle.Tolerance, Angle.Basis)), StringComparison.Ordinal);
        Assert.Contains("unknown: colour", Remark(new(Angle.Id, Angle.Calculation, Angle.Inputs.Append(new CaseValue("colour", Measure.Parse("1"))), Angle.Expected, Angle.Tolerance, Angle.Basis)), StringComparison.Ordinal);
        Assert.EndsWith("; missing: true lap; unknown: lap, nearest 'true lap'.", Remark(new(
            Angle.Id, Angle.Calculation, Angle.Inputs.Select(static value => value.Name == "true lap" ? new CaseValue("lap", value.Value) : value), Angle.Expected, Angle.Tolerance, Angle.Basis)), StringComparison.Ordinal);
        Assert.Contains("works out a number in deg; expected was 3 mm", Remark(new(Angle.Id, Angle.Calculation, Angle.Inputs, Measure.Parse("3 mm"), Measure.Parse("1 mm"), Angle.Basis)), StringComparison.Ordinal);
        Assert.Contains("The calculation refused it: ", Remark(Changed(Angle, "strip width", "50 m")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_could_not_be_asked_is_told_apart_from_what_differs()
    {
        Assert.Equal(CaseOutcome.Agrees, Result(Angle).Outcome);
        VerificationCase off = new(Angle.Id, Angle.Calculation, Angle.Inputs, Measure.Parse("9.2 deg"), Measure.Parse("0.01 deg"), Angle.Basis);
        Assert.Equal(CaseOutcome.Differs, Result(off).Outcome);
        Assert.StartsWith("spiral-angle-no-lap: DIFFERS: got 9.15785 deg, expected 9.2 deg within 0.01 deg", Result(off).ToString(), StringComparison.Ordinal);
        VerificationCase unknown = new(Angle.Id, "fence.length", Angle.Inputs, Angle.Expected, Angle.Tolerance, Angle.Basis);
        Assert.Equal(CaseOutcome.NotAsked, Result(unknown).Outcome);
        Assert.Equal("spiral-angle-no-lap: NOT ASKED: No calculation 'fence.length' is known.", Result(unknown).ToString());
        Assert.Equal(CaseOutcome.NotAsked, Result(Changed(Angle, "strip width", "50 degC")).Outcome);
        Assert.StartsWith("spiral-angle-no-lap: REFUSED: The calculation refused it", Result(Changed(Angle, "strip width", "50 m")).ToString(), StringComparison.Ordinal);
    }

    // sin A = w/(pi d): 9.1578495119187 degrees.
    [Theory]
    [InlineData("9.1578 deg", "0.000001 deg", "got 9.1578495 deg, expected 9.1578 deg within 1E-06 deg")]
    [InlineData("9.15785 deg", "0 deg", "got 9.1578495119187")]
    [InlineData("9.1 deg", "1 deg", "got 9.15785 deg, expected 9.1 deg within 1 deg")]
    public void As_many_digits_are_shown_as_the_tolerance_needs(string expected, string tolerance, string said) => Assert.Contains(
        said, Result(new(Angle.Id, Angle.Calculation, Angle.Inputs, Measure.Parse(expected), Measure.Parse(tolerance), Angle.Basis)).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Two_numbers_that_differ_never_look_alike()
    {
        foreach (VerificationCase one in RuleSetDocument.Reference.Cases)
        {
            foreach (double off in new[] { 1.0001, 1.01, 1.5, 3 })
            {
                var expected = new Measure(Result(one).Got!.Value.Number + (off * one.Tolerance.Number), one.Expected.Unit);
                string text = Result(new(one.Id, one.Calculation, one.Inputs, expected, one.Tolerance, one.Basis)).ToString();
                string[] parts = text.Split("got ")[1].Split([", expected ", " within "], StringSplitOptions.None);
                Assert.True(parts[0] != parts[1], text);
            }
        }
    }

    [Fact]
    public void Without_cases_nothing_is_verified() => Assert.False(new RuleSetDocument(RuleSet.Default).Verify().Passed);

    [Fact]
    public void A_host_adds_calculations_of_its_own()
    {
        var twice = new CaseCalculation("host.twice", "twice a length", [new CalculationInput("length", TradeUnit.Millimeter)], TradeUnit.Millimeter,
            static given => Measure.Of(given["length"].ToLength() * 2));
        var one = new VerificationCase("twice", "host.twice", [new CaseValue("length", Measure.Parse("2 m"))], Measure.Parse("4 m"), Measure.Parse("0 mm"), Basis.FirstPrinciples("arithmetic"));
        Assert.True(Verification.Of([one], [twice]).Passed);
        Assert.False(Verification.Of([one]).Passed);
        var again = new CaseCalculation("spiral.angle", "a name that is taken", [], TradeUnit.One, static _ => Measure.Parse("1"));
        Assert.Contains("'spiral.angle' is there twice", Assert.Throws<ArgumentException>(() => Verification.Of([one], [again])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Cases_come_back_from_a_file_and_stay_outside_the_fingerprint()
    {
        var read = RuleSetDocument.Read(RuleSetDocument.Reference.Write());
        Assert.Equal(RuleSetDocument.Reference, read);
        Assert.Equal(RuleSet.Default.Fingerprint, read.Rules.Fingerprint);
    }

    [Theory]
    [InlineData("\"tolerance\": \"0.0000001 deg\"", "\"tolerance\": \"-1 deg\"", "$.cases[0].tolerance", "must be zero or more")]
    [InlineData("\"tolerance\": \"0.0000001 deg\"", "\"tolerance\": \"1 mm\"", "$.cases[0].tolerance", "of the same kind")]
    [InlineData("\"expected\": \"9.1578495 deg\"", "\"expected\": \"9.1578495 mm\"", "$.cases[0].expected", "works out a number in deg; expected was 9.1578495 mm")]
    [InlineData("\"outside diameter\": \"100 mm\"", "\"outside diameter\": \"1,5 mm\"", "$.cases[0].inputs['outside diameter']", "comma")]
    [InlineData("\"spiral-advance-half-lap\"", "\"spiral-angle-no-lap\"", "$.cases[1].id", "stands twice")]
    public void Faults_of_cases_are_told(string was, string slip, string path, string said)
    {
        string text = RuleSetDocument.Reference.Write().Replace("1E-07", "0.0000001", StringComparison.Ordinal);
        Assert.Contains(was, text, StringComparison.Ordinal);
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text.Replace(was, slip, StringComparison.Ordinal))).Faults);
        Assert.Equal(path, fault.Path);
        Assert.Contains(said, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_checks_itself()
    {
        Assert.Contains("stands twice", Assert.Throws<ArgumentException>(static () => new VerificationCase("a", "b", [new("x", Measure.Parse("1")), new("x", Measure.Parse("2"))], Measure.Parse("1"), Measure.Parse("0"), Angle.Basis)).Message, StringComparison.Ordinal);
        Assert.Contains("same kind", Assert.Throws<ArgumentException>(static () => new VerificationCase("a", "b", [], Measure.Parse("1 mm"), Measure.Parse("0"), Angle.Basis)).Message, StringComparison.Ordinal);
        Assert.Contains("twice", Assert.Throws<ArgumentException>(static () => new RuleSetDocument(RuleSet.Default, cases: [Angle, Angle])).Message, StringComparison.Ordinal);
    }

    private static CaseResult Result(VerificationCase one) => Assert.Single(Verification.Of([one]).Results);

    private static string Remark(VerificationCase one)
    {
        CaseResult result = Assert.Single(Verification.Of([one]).Results);
        Assert.False(result.Agrees);
        Assert.Null(result.Got);
        return result.Remark;
    }

    private static VerificationCase Changed(VerificationCase one, string name, string value) => new(
        one.Id, one.Calculation, one.Inputs.Where(given => given.Name != name).Append(new CaseValue(name, Measure.Parse(value))), one.Expected, one.Tolerance, one.Basis);
}
