using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>A strip with the name by which the lines of a document refer to it.</summary>
public sealed record NamedStock
{
    /// <summary>Names a strip.</summary>
    /// <param name="name">The name, unique in the document.</param>
    /// <param name="stock">The strip.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public NamedStock(string name, StripStock stock)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(stock);
        this.Name = name;
        this.Stock = stock;
    }

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The strip.</summary>
    public StripStock Stock { get; }

    /// <summary>Name and strip.</summary>
    public override string ToString() => $"{this.Name}: {this.Stock}";
}
