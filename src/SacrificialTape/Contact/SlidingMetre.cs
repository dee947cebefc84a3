namespace SacrificialTape.Contact;

/// <summary>A place of the sliding rectangle and the bare area in it.</summary>
internal readonly record struct SlidingMetre(double BareMm2, double X, double Y, double ExtentX, double ExtentY);
