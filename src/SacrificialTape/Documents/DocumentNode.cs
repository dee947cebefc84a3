using System.Text.Json;

namespace SacrificialTape.Documents;

/// <summary>One value of a JSON document with the place it stands at.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Place">Its place in the structure.</param>
/// <param name="Offset">Where its text begins, in bytes.</param>
/// <param name="Text">The text of a string, or the digits of a number as written.</param>
/// <param name="Members">The members of an object by name.</param>
/// <param name="Items">The items of an array.</param>
internal sealed record DocumentNode(
    JsonValueKind Kind, DocumentPlace Place, long Offset, string Text, DocumentMembers Members, IReadOnlyList<DocumentNode> Items)
{
    internal static readonly IReadOnlyList<DocumentNode> NoItems = [];

    /// <summary>Its place in the structure as faults show it.</summary>
    internal string Path => this.Place.ToString();

    /// <summary>What it is, in the words of a fault.</summary>
    internal string Word => this.Kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };
}
