namespace SacrificialTape.Documents;

/// <summary>The kinds of one sort of thing by their words and by their types.</summary>
/// <typeparam name="TBase">What they are kinds of.</typeparam>
internal sealed class FormTable<TBase>
    where TBase : class
{
    private readonly Dictionary<string, Form<TBase>> byKind = new(StringComparer.Ordinal);
    private readonly Dictionary<Type, Form<TBase>> byType = [];
    private readonly string sort;

    internal FormTable(string sort, IEnumerable<Form<TBase>> forms)
    {
        this.sort = sort;
        foreach (Form<TBase> form in forms)
        {
            if (!this.byKind.TryAdd(form.Kind, form))
            {
                throw new ArgumentException($"Two forms of a {sort} are named '{form.Kind}'.", nameof(forms));
            }

            if (!this.byType.TryAdd(form.Type, form))
            {
                throw new ArgumentException($"{form.Type.Name} has two forms: '{this.byType[form.Type].Kind}' and '{form.Kind}'.", nameof(forms));
            }
        }
    }

    internal IReadOnlyCollection<string> Kinds => this.byKind.Keys;

    internal IReadOnlyCollection<Type> Types => this.byType.Keys;

    /// <summary>The words of kinds whose things are of a type, or of one derived from it, in the order of the words.</summary>
    internal IEnumerable<string> KindsOf(Type type) => this.byType.Values.Where(form => type.IsAssignableFrom(form.Type)).Select(static form => form.Kind).Order(StringComparer.Ordinal);

    /// <summary>The word for the kind of a thing.</summary>
    /// <exception cref="ArgumentException">Its type has no form.</exception>
    internal string KindOf(TBase thing) => this.byType.TryGetValue(thing.GetType(), out Form<TBase>? form)
        ? form.Kind
        : throw new ArgumentException($"A {this.sort} of type {thing.GetType().Name} ({thing}) has no form, so that no word is known for it. Hand in a form for it.", nameof(thing));

    /// <summary>Reads a thing by the form that its <c>kind</c> names; null, with faults, when it cannot be read.</summary>
    internal TBase? Read(FormReader reader)
    {
        string? kind = reader.Members.Text("kind", $"the kind of {this.sort}");
        if (kind is null)
        {
            return null;
        }

        if (!this.byKind.TryGetValue(kind, out Form<TBase>? form))
        {
            reader.Context.Faults.Add(
                reader.Members.Node.Members["kind"],
                $"No {this.sort} of kind '{DocumentTree.Short(kind)}' is known here. {this.Hint(kind)} A kind of your own needs a form of its own.");
            return null;
        }

        int before = reader.Context.Faults.Count;
        TBase? read = form.Read(reader);
        if (read is null && reader.Context.Faults.Count == before)
        {
            // A reader of a host that makes nothing and says nothing.
            reader.Context.Faults.Add(reader.Members.Node, $"The form '{form.Kind}' could not read this {this.sort}.");
        }

        return read;
    }

    // Whoever is far from every word has no list at hand: all of them then.
    private string Hint(string kind) => NearestName.To(kind, this.byKind.Keys) is { } near
        ? $"Nearest is '{near}'."
        : $"Known are {string.Join(", ", this.byKind.Keys.Order(StringComparer.Ordinal))}.";

    /// <summary>Writes the members of a thing, its kind first.</summary>
    /// <exception cref="ArgumentException">Its type has no form.</exception>
    internal void Write(FormWriter writer, TBase thing)
    {
        if (!this.byType.TryGetValue(thing.GetType(), out Form<TBase>? form))
        {
            throw new ArgumentException(
                $"{writer.Place}: a {this.sort} of type {thing.GetType().Name} ({thing}) has no form and cannot be written. Hand in a form for it.", nameof(thing));
        }

        writer.Text("kind", form.Kind);
        form.Write(writer, thing);
    }
}
