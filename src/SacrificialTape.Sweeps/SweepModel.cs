using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps;

/// <summary>
/// Works out the answers of some rows. It must depend on the rows alone, for several threads call it at once, each with blocks of its own.
/// </summary>
/// <param name="rows">The inputs.</param>
/// <param name="answers">Where the answers go; they come filled with NaN.</param>
public delegate void SweepModel(SweepBlock rows, AnswerBlock answers);
