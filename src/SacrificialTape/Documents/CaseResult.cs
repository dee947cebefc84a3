using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>What came of one verification case.</summary>
public sealed record CaseResult
{
    internal CaseResult(VerificationCase given, Measure? got, CaseOutcome outcome, string remark)
    {
        this.Case = given;
        this.Got = got;
        this.Outcome = outcome;
        this.Remark = remark;
    }

    /// <summary>The case.</summary>
    public VerificationCase Case { get; }

    /// <summary>What the library in use works out, in the unit of the expected answer; null when it could not be asked or refused.</summary>
    public Measure? Got { get; }

    /// <summary>What came of it.</summary>
    public CaseOutcome Outcome { get; }

    /// <summary>Whether the answer lies within the tolerance.</summary>
    public bool Agrees => this.Outcome == CaseOutcome.Agrees;

    /// <summary>Why it could not be asked or refused; empty otherwise.</summary>
    public string Remark { get; }

    /// <summary>The case and what came of it in one line, with as many digits as the tolerance asks for.</summary>
    public override string ToString()
    {
        string word = this.Outcome switch
        {
            CaseOutcome.Agrees => "agrees",
            CaseOutcome.Differs => "DIFFERS",
            CaseOutcome.Refused => "REFUSED",
            _ => "NOT ASKED",
        };
        return $"{this.Case.Id}: {word}: {(this.Got is { } number ? this.Numbers(number) : this.Remark)}";
    }

    private string Numbers(Measure got)
    {
        // One digit beyond the first of the tolerance shows on which side of it the answer lies; where it does not, all of them.
        double tolerance = this.Case.Tolerance.In(got.Unit);
        int digits = Math.Clamp(tolerance > 0 ? 2 + Place(got.Number) - Place(tolerance) : 17, 6, 17);
        string expected = MeasureText.Exact(this.Case.Expected);
        string shown = MeasureText.Write(got.Number, got.Unit, digits);
        return $"got {(shown == expected && !this.Agrees ? MeasureText.Exact(got) : shown)}, expected {expected} within {MeasureText.Exact(this.Case.Tolerance)}";
    }

    // Where the first digit stands: 0 for 1 to 9, -1 for 0.1.
    private static int Place(double number) => number == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(number)));
}
