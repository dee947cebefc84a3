using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>What came of one verification case.</summary>
public sealed record CaseResult
{
    internal CaseResult(VerificationCase given, Measure? got, bool agrees, string remark)
    {
        this.Case = given;
        this.Got = got;
        this.Agrees = agrees;
        this.Remark = remark;
    }

    /// <summary>The case.</summary>
    public VerificationCase Case { get; }

    /// <summary>What the library in use works out, in the unit of the expected answer; null when it could not be asked or refused.</summary>
    public Measure? Got { get; }

    /// <summary>Whether it lies within the tolerance.</summary>
    public bool Agrees { get; }

    /// <summary>Why it could not be asked or refused; empty otherwise.</summary>
    public string Remark { get; }

    /// <summary>The case and what came of it in one line.</summary>
    public override string ToString()
    {
        string word = this.Agrees ? "agrees" : "DIFFERS";
        string got = this.Got is { } number ? $"got {number}, expected {this.Case.Expected} within {this.Case.Tolerance}" : this.Remark;
        return $"{this.Case.Id}: {word}: {got}";
    }
}
