namespace SacrificialTape.Tests;

/// <summary>A span covered by strips side by side.</summary>
public sealed record SpanCase(double SpanMm, double WidthMm, double LapMm);
