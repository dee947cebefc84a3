using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>A verdict on patching or rewrapping, with its reasons. It is an aid: the choice stays with whoever answers for the line.</summary>
public sealed record RepairDecision
{
    internal RepairDecision(RepairVerdict verdict, ValueList<string> reasons)
    {
        this.Verdict = verdict;
        this.Reasons = reasons;
    }

    /// <summary>The verdict.</summary>
    public RepairVerdict Verdict { get; }

    /// <summary>Its reasons, the weightiest first.</summary>
    public ValueList<string> Reasons { get; }

    /// <summary>Verdict and reasons.</summary>
    public override string ToString() => $"{this.Verdict}: {string.Join("; ", this.Reasons)}";
}
