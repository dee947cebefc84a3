namespace SacrificialTape.Provenance;

/// <summary>
/// Names the formula, and thereby the source, behind a public calculation that returns a bare quantity. A test reads it
/// and fails for a calculation that has none.
/// </summary>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property, AllowMultiple = true)]
internal sealed class BasisOfAttribute(Type catalogue, string formula) : Attribute
{
    /// <summary>The class that lists the formulas of a room.</summary>
    internal Type Catalogue { get; } = catalogue;

    /// <summary>The formula's member in that class.</summary>
    internal string Formula { get; } = formula;
}
