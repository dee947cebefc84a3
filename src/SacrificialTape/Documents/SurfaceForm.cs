using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>How one kind of surface stands in a document. A host states one for each surface of its own.</summary>
public sealed record SurfaceForm
{
    private SurfaceForm(Form<Surface> form) => this.Form = form;

    /// <summary>The word by which documents name the kind.</summary>
    public string Kind => this.Form.Kind;

    internal Form<Surface> Form { get; }

    /// <summary>States a form.</summary>
    /// <typeparam name="TSurface">The type itself; types derived from it need forms of their own.</typeparam>
    /// <param name="kind">The word by which documents name the kind.</param>
    /// <param name="read">Reads the members of the object and ends with <see cref="FormReader.Make{T}"/>; null where that is null.</param>
    /// <param name="write">Writes what <paramref name="read"/> takes back.</param>
    /// <exception cref="ArgumentException">The kind is empty.</exception>
    public static SurfaceForm Of<TSurface>(string kind, Func<FormReader, TSurface?> read, Action<FormWriter, TSurface> write)
        where TSurface : Surface => new(Form<Surface>.Of(kind, read, write));

    /// <summary>The kind.</summary>
    public override string ToString() => this.Kind;
}
