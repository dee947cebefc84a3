namespace SacrificialTape.Sweeps.Grids;

/// <summary>
/// Works out the answers of a stage. An answer must depend on the values of its own row alone, whether a column comes as a number for
/// each row or as one number for all; several threads call it at once, each with rows of its own.
/// </summary>
/// <param name="rows">What the stage needs.</param>
/// <param name="answers">Where the answers go; they come filled with NaN.</param>
public delegate void StageModel(StageRows rows, AnswerBlock answers);
