namespace SacrificialTape.Documents;

/// <summary>How one kind of thing is read and written: its word, its type, its reader and its writer.</summary>
/// <typeparam name="TBase">What it is a kind of.</typeparam>
internal sealed class Form<TBase>
    where TBase : class
{
    private Form(string kind, Type type, Func<FormReader, TBase?> read, Action<FormWriter, TBase> write)
    {
        this.Kind = kind;
        this.Type = type;
        this.Read = read;
        this.Write = write;
    }

    internal string Kind { get; }

    internal Type Type { get; }

    internal Func<FormReader, TBase?> Read { get; }

    internal Action<FormWriter, TBase> Write { get; }

    internal static Form<TBase> Of<T>(string kind, Func<FormReader, T?> read, Action<FormWriter, T> write)
        where T : class, TBase
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(write);
        return new(kind, typeof(T), read, (writer, thing) => write(writer, (T)thing));
    }
}
