using SacrificialTape.Costing;

namespace SacrificialTape.Documents;

/// <summary>How one kind of cost item stands in a document. A host states one for each cost item of its own.</summary>
public sealed record CostItemForm
{
    private CostItemForm(Form<ICostItem> form) => this.Form = form;

    /// <summary>The word by which documents name the kind.</summary>
    public string Kind => this.Form.Kind;

    internal Form<ICostItem> Form { get; }

    /// <summary>States a form.</summary>
    /// <typeparam name="TItem">The type itself; types derived from it need forms of their own.</typeparam>
    /// <param name="kind">The word by which documents name the kind.</param>
    /// <param name="read">Reads the members of the object and ends with <see cref="FormReader.Make{T}"/>; null where that is null.</param>
    /// <param name="write">Writes what <paramref name="read"/> takes back.</param>
    /// <exception cref="ArgumentException">The kind is empty.</exception>
    public static CostItemForm Of<TItem>(string kind, Func<FormReader, TItem?> read, Action<FormWriter, TItem> write)
        where TItem : class, ICostItem => new(Form<ICostItem>.Of(kind, read, write));

    /// <summary>The kind.</summary>
    public override string ToString() => this.Kind;
}
