using SacrificialTape.Sweeps.Answers;

namespace SacrificialTape.Sweeps;

/// <summary>What is to be kept of an answer.</summary>
public sealed record AnswerSummary
{
    /// <summary>Says what is to be kept.</summary>
    /// <param name="answer">Name of the answer.</param>
    /// <param name="summary">The summary that takes its rows.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public AnswerSummary(string answer, Summary summary)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(answer);
        ArgumentNullException.ThrowIfNull(summary);
        this.Answer = answer;
        this.Summary = summary;
    }

    /// <summary>Name of the answer.</summary>
    public string Answer { get; }

    /// <summary>The summary that takes its rows.</summary>
    public Summary Summary { get; }

    /// <summary>Answer and summary as invariant text.</summary>
    public override string ToString() => $"{this.Answer}: {this.Summary}";
}
