using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>Something to be said of a rate wherever it is used: the rule, what was measured, against what.</summary>
internal sealed record RateConcern(string Rule, Measure? Measured = null, Measure? Limit = null);
