namespace SacrificialTape.Contact;

/// <summary>A bare rectangle in mm, or what is left of a disc beyond the rectangles within it, which counts only while the disc is whole.</summary>
internal readonly record struct BarePart(double LowX, double HighX, double LowY, double HighY, double Weight, double Rest);
