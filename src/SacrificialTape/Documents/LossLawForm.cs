using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>How one kind of loss law stands in a document. A host states one for each law of its own.</summary>
public sealed record LossLawForm
{
    private LossLawForm(Form<ILossLaw> form) => this.Form = form;

    /// <summary>The word by which documents name the kind.</summary>
    public string Kind => this.Form.Kind;

    internal Form<ILossLaw> Form { get; }

    /// <summary>States a form.</summary>
    /// <typeparam name="TLaw">The type itself; types derived from it need forms of their own.</typeparam>
    /// <param name="kind">The word by which documents name the kind.</param>
    /// <param name="read">Reads the members of the object and ends with <see cref="FormReader.Make{T}"/>; null where that is null.</param>
    /// <param name="write">Writes what <paramref name="read"/> takes back.</param>
    /// <exception cref="ArgumentException">The kind is empty.</exception>
    public static LossLawForm Of<TLaw>(string kind, Func<FormReader, TLaw?> read, Action<FormWriter, TLaw> write)
        where TLaw : class, ILossLaw => new(Form<ILossLaw>.Of(kind, read, write));

    /// <summary>The kind.</summary>
    public override string ToString() => this.Kind;
}
