namespace SacrificialTape.Sweeps;

/// <summary>Some consecutive rows of a study.</summary>
/// <param name="FirstRow">The first row, from 0.</param>
/// <param name="Rows">How many.</param>
public readonly record struct SweepSlice(long FirstRow, long Rows);
