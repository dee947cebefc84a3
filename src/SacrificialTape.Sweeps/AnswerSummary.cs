using SacrificialTape.Sweeps.Answers;

namespace SacrificialTape.Sweeps;

/// <summary>What is to be kept of an answer.</summary>
/// <param name="Answer">Name of the answer.</param>
/// <param name="Summary">The summary that takes its rows.</param>
public sealed record AnswerSummary(string Answer, Summary Summary);
