namespace SacrificialTape.Contact;

/// <summary>An upright rectangle on the unrolled surface, in mm.</summary>
/// <param name="LowX">From, along.</param>
/// <param name="HighX">To, along.</param>
/// <param name="LowY">From, around.</param>
/// <param name="HighY">To, around.</param>
internal readonly record struct Box(double LowX, double HighX, double LowY, double HighY);
