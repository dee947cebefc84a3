namespace SacrificialTape.Documents;

/// <summary>Where a value stands in the structure of a document. Written out only for the few that a fault names.</summary>
/// <param name="Parent">The object or list it stands in; null for the root.</param>
/// <param name="Name">Its name, where it is a member.</param>
/// <param name="Index">Its place, where it is an item.</param>
internal sealed record DocumentPlace(DocumentPlace? Parent, string? Name, int Index)
{
    internal static readonly DocumentPlace Root = new(null, null, 0);

    /// <summary>The path as faults show it, from the root.</summary>
    public override string ToString()
    {
        if (this.Parent is null)
        {
            return "$";
        }

        string parent = this.Parent.ToString();
        return this.Name is { } name ? DocumentTree.Member(parent, name) : $"{parent}[{this.Index}]";
    }
}
