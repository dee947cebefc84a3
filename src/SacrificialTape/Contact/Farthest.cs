namespace SacrificialTape.Contact;

/// <summary>A point far from all windows: how far at most any point is, how far this one, and how its distance comes about.</summary>
internal readonly record struct Farthest(double AtMostMm, double FoundMm, double X, double Y, double AlongMm, double AroundMm, double Factor);
