namespace SacrificialTape.Contact;

/// <summary>A conductance between two nodes of a net.</summary>
internal readonly record struct NetLink(int One, int Other, double Siemens);
