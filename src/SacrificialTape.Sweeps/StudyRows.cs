using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps;

/// <summary>Some consecutive rows of a study with their answers.</summary>
/// <param name="Inputs">The values of the inputs.</param>
/// <param name="Answers">The answers.</param>
public sealed record StudyRows(SweepBlock Inputs, AnswerBlock Answers);
