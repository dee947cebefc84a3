namespace SacrificialTape.Contact;

/// <summary>What the voltage lost at one window consists of: A and V.</summary>
internal readonly record struct VoltageTerms(double Amperes, double AdhesiveV, double SpreadV, double StripV, double TotalV);
