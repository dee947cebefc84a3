using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>How one kind of lay stands in a document. A host states one for each lay of its own.</summary>
public sealed record LayForm
{
    private LayForm(Form<ILay> form) => this.Form = form;

    /// <summary>The word by which documents name the kind.</summary>
    public string Kind => this.Form.Kind;

    internal Form<ILay> Form { get; }

    /// <summary>States a form.</summary>
    /// <typeparam name="TLay">The type itself; types derived from it need forms of their own.</typeparam>
    /// <param name="kind">The word by which documents name the kind.</param>
    /// <param name="read">Reads the members of the object and ends with <see cref="FormReader.Make{T}"/>; null where that is null.</param>
    /// <param name="write">Writes what <paramref name="read"/> takes back.</param>
    /// <exception cref="ArgumentException">The kind is empty.</exception>
    public static LayForm Of<TLay>(string kind, Func<FormReader, TLay?> read, Action<FormWriter, TLay> write)
        where TLay : class, ILay => new(Form<ILay>.Of(kind, read, write));

    /// <summary>The kind.</summary>
    public override string ToString() => this.Kind;
}
