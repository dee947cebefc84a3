namespace SacrificialTape.Exposure;

/// <summary>The two terms of a dose-response function, um/a, and their sum.</summary>
internal readonly record struct DoseTerms(double SulfurDioxide, double Chloride, double Rate);
