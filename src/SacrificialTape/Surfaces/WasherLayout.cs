using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>One way to lay washers on a strip: rows, their distance, the step along a row, and how many that gives.</summary>
internal readonly record struct WasherLayout(WasherRows Kind, int Rows, StoredNumber RowDistanceMm, StoredNumber StepMm, long Count);
