using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// Works out an answer of some rows at a value that is sought, for instance lives at a thickness of foil. In no row may the answer fall
/// as the value rises. Several threads call it at once, each with blocks of its own.
/// </summary>
/// <param name="value">The value that is tried.</param>
/// <param name="rows">The inputs.</param>
/// <param name="answers">Where the answers go; they come filled with NaN.</param>
public delegate void ThresholdModel(double value, SweepBlock rows, Span<double> answers);
