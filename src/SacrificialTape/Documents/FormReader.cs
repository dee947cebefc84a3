using System.Globalization;
using System.Text.Json;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>
/// Takes the members of one object of a document by name. What is missing, of the wrong kind or in a wrong unit becomes
/// a fault and an arbitrary value stands in for it, so that the other members are looked at too; <see cref="Make{T}"/>
/// makes something only where there was no fault.
/// </summary>
/// <remarks>Ask for every member that may stand, then call <see cref="Make{T}"/> once: whatever was not asked for is a fault.</remarks>
public sealed class FormReader
{
    // Where an item is read in place of a surface of its own, the surface around it stands in.
    private readonly Surface? implied;
    private readonly int before;

    internal FormReader(ObjectReader members, ReadingContext context, Surface? implied = null)
    {
        this.Members = members;
        this.Context = context;
        this.implied = implied;
        this.before = context.Faults.Count;
    }

    internal ObjectReader Members { get; }

    internal ReadingContext Context { get; }

    internal DocumentNode Node => this.Members.Node;

    /// <summary>Whether a member stands.</summary>
    /// <param name="name">Its name.</param>
    public bool Has(string name) => this.Members.Has(name);

    /// <summary>A text that is not empty.</summary>
    /// <param name="name">Name of the member.</param>
    public string Text(string name) => this.Members.Text(name, "a text") ?? string.Empty;

    /// <summary>A text that is not empty; null where it is left out.</summary>
    /// <param name="name">Name of the member.</param>
    public string? OptionalText(string name) => this.Members.OptionalText(name);

    /// <summary>One of a closed list of words.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="words">The words.</param>
    public string Word(string name, params IReadOnlyList<string> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        if (this.Members.OptionalText(name) is { } text)
        {
            if (!words.Contains(text, StringComparer.Ordinal))
            {
                this.Context.Faults.Add(this.Node.Members[name], $"'{DocumentTree.Short(text)}' is not known. Expected {List(words)}.");
            }

            return text;
        }

        if (!this.Has(name))
        {
            _ = this.Members.Required(name, "expected " + List(words));
        }

        return string.Empty;
    }

    /// <summary>True or false; false where it is left out.</summary>
    /// <param name="name">Name of the member.</param>
    public bool Flag(string name) => this.Members.Flag(name);

    /// <summary>A whole number, which stands as a JSON number.</summary>
    /// <param name="name">Name of the member.</param>
    public int Count(string name) => this.Members.Required(name, "a whole number") is { } member ? this.CountOf(member, name) : 1;

    /// <summary>A whole number; another where it is left out.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="otherwise">The number where it is left out.</param>
    public int OptionalCount(string name, int otherwise) =>
        this.Members.Optional(name) is { } member ? this.CountOf(member, name) : otherwise;

    /// <summary>A measure of one kind of quantity, in whatever unit of that kind.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="unit">A unit of the kind that is wanted; the measure comes back in it.</param>
    public Measure Measure(string name, TradeUnit unit) => new(this.Number(name, unit), unit);

    /// <summary>A length.</summary>
    /// <param name="name">Name of the member.</param>
    public Length Length(string name) => UnitsNet.Length.FromMillimeters(this.Number(name, TradeUnit.Millimeter));

    /// <summary>A length; null where it is left out.</summary>
    /// <param name="name">Name of the member.</param>
    public Length? OptionalLength(string name) => this.Has(name) ? this.Length(name) : null;

    /// <summary>An angle.</summary>
    /// <param name="name">Name of the member.</param>
    public Angle Angle(string name) => UnitsNet.Angle.FromDegrees(this.Number(name, TradeUnit.Degree));

    /// <summary>An area.</summary>
    /// <param name="name">Name of the member.</param>
    public Area Area(string name) => UnitsNet.Area.FromSquareMeters(this.Number(name, TradeUnit.SquareMeter));

    /// <summary>A number without unit, written as text.</summary>
    /// <param name="name">Name of the member.</param>
    public double Number(string name) => this.Number(name, TradeUnit.One);

    /// <summary>A surface of a certain type.</summary>
    /// <typeparam name="TSurface">The type, or one it is derived from.</typeparam>
    /// <param name="name">Name of the member.</param>
    public TSurface Surface<TSurface>(string name)
        where TSurface : Surface
    {
        if (!this.Has(name) && this.implied is { } around)
        {
            if (around is TSurface own)
            {
                return own;
            }

            this.Context.Faults.Add(this.Node, $"This cannot lie on {around.Description}. Expected {this.SurfaceKinds<TSurface>()}.");
            return null!;
        }

        DocumentNode? member = this.Members.Required(name, "the surface");
        Surface? read = member is null ? null : this.ReadSurface(member);
        if (read is not null and not TSurface)
        {
            this.Context.Faults.Add(member!, $"A surface of kind '{member!.Members["kind"].Text}' does not do here. Expected {this.SurfaceKinds<TSurface>()}.");
        }

        return (read as TSurface)!;
    }

    /// <summary>A surface of one of some types that have nothing else in common.</summary>
    internal Surface SurfaceAmong(string name, params IReadOnlyList<Type> types)
    {
        int before = this.Context.Faults.Count;
        Surface read = this.Surface<Surface>(name);
        if (read is not null && this.Context.Faults.Count == before && !types.Any(type => type.IsInstanceOfType(read)))
        {
            DocumentNode? member = this.Node.Members.GetValueOrDefault(name);
            string said = member is null ? $"This cannot lie on {read.Description}." : $"A surface of kind '{member.Members["kind"].Text}' does not do here.";
            this.Context.Faults.Add(member ?? this.Node, $"{said} Expected {string.Join(", ", types.SelectMany(this.Context.Forms.Surfaces.KindsOf))}.");
        }

        return read!;
    }

    /// <summary>A strip, by the name it has among the document's stocks.</summary>
    /// <param name="name">Name of the member.</param>
    public StripStock Stock(string name)
    {
        if (this.Members.Text(name, "the name of one of the document's stocks") is not { } stock)
        {
            return null!;
        }

        if (this.Context.StockOf(stock) is { } known)
        {
            return known;
        }

        string nearest = this.Context.StockNames.Count == 0 ? " It has none that could be read." : NearestName.Hint(stock, this.Context.StockNames);
        this.Context.Faults.Add(this.Node.Members[name], $"The document has no stock '{DocumentTree.Short(stock)}'.{nearest}");
        return null!;
    }

    /// <summary>End lap, wander, passes and method of a lay.</summary>
    /// <param name="name">Name of the member.</param>
    public LayChoices Choices(string name) => this.Object(name, LayChoicesForm.Read);

    /// <summary>A lay on a surface: where it states none of its own it lies on this one.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="surface">The surface; null where the lay must state its own.</param>
    public ILay Lay(string name, Surface? surface = null) =>
        this.Members.Required(name, "a lay") is { } member ? this.ReadLay(member, surface)! : null!;

    /// <summary>An object, by a reader of its own.</summary>
    /// <typeparam name="T">What it becomes.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <param name="read">Reads its members and ends with <see cref="Make{T}"/>.</param>
    public T Object<T>(string name, Func<FormReader, T?> read)
        where T : class => (this.Members.Required(name, "an object") is { } member ? this.ReadObject(member, read) : null)!;

    /// <summary>An object, by a reader of its own; null where it is left out.</summary>
    /// <typeparam name="T">What it becomes.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <param name="read">Reads its members and ends with <see cref="Make{T}"/>.</param>
    public T? OptionalObject<T>(string name, Func<FormReader, T?> read)
        where T : class => this.Members.Optional(name) is { } member ? this.ReadObject(member, read) : null;

    /// <summary>A list of objects; empty where it is left out.</summary>
    /// <typeparam name="T">What each becomes.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <param name="read">Reads the members of one and ends with <see cref="Make{T}"/>.</param>
    public ValueList<T> List<T>(string name, Func<FormReader, T?> read)
        where T : class
    {
        IReadOnlyList<DocumentNode> items = this.Members.Items(name);
        var all = new List<T>(items.Count);
        foreach (DocumentNode item in items)
        {
            if (this.ReadObject(item, read) is { } one)
            {
                all.Add(one);
            }
        }

        return new ValueList<T>(all);
    }

    /// <summary>A list of texts; empty where it is left out.</summary>
    /// <param name="name">Name of the member.</param>
    public ValueList<string> Texts(string name)
    {
        IReadOnlyList<DocumentNode> items = this.Members.Items(name);
        foreach (DocumentNode item in items.Where(static item => item.Kind != JsonValueKind.String || string.IsNullOrWhiteSpace(item.Text)))
        {
            this.Context.Faults.Add(item, item.Kind == JsonValueKind.String ? "The text is empty." : $"Expected a text, not {item.Word}.");
        }

        return new ValueList<string>(items.Select(static item => item.Text));
    }

    /// <summary>
    /// Ends the reading of the object: members that nobody asked for are faults. Then makes what it stands for, or null
    /// where there was a fault.
    /// </summary>
    /// <typeparam name="T">What it stands for.</typeparam>
    /// <param name="make">Makes it. An argument that it refuses becomes a fault, at the member of the parameter's name where there is one.</param>
    public T? Make<T>(Func<T> make)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(make);
        this.Members.Close();
        if (this.Context.Faults.Count > this.before)
        {
            return null;
        }

        try
        {
            return make();
        }
        catch (Exception refused) when (refused is ArgumentException or OverflowException or InvalidOperationException)
        {
            string? parameter = (refused as ArgumentException)?.ParamName;
            DocumentNode place = parameter is not null && this.Node.Members.TryGetValue(parameter, out DocumentNode? member) ? member : this.Node;
            this.Context.Faults.Add(place, Bare(refused.Message));
            return null;
        }
    }

    /// <summary>
    /// Tells beforehand how much work a constructor has with what the object states, for instance the number of strips
    /// that it lays one by one. A document that asks for too much is refused: see <see cref="DocumentLimits.Steps"/>.
    /// </summary>
    /// <param name="steps">About how many steps.</param>
    public void CountSteps(double steps) => this.Context.Charge(this.Node, steps);

    /// <summary>The number of a measure in the canonical unit of its kind. What its author gave is kept.</summary>
    internal double Number(string name, TradeUnit canonical)
    {
        // What is expected is put into words only where it is told.
        if (this.Members.Optional(name) is not { } node)
        {
            _ = this.Members.Required(name, $"a number with its unit, as in \"{MeasureText.Exact(Example(canonical))}\"");
            return 1;
        }

        return this.Members.OptionalMeasure(name, canonical) is { } measure ? this.Number(name, node, measure, canonical) : 1;
    }

    /// <summary>A list of measures of one kind; empty where it is left out.</summary>
    internal IReadOnlyList<double> Numbers(string name, TradeUnit canonical)
    {
        IReadOnlyList<DocumentNode> items = this.Members.Items(name);
        var numbers = new List<double>(items.Count);
        foreach (DocumentNode item in items)
        {
            if (item.Kind != JsonValueKind.String)
            {
                this.Context.Faults.Add(item, $"Expected a number with its unit, as in \"{MeasureText.Exact(Example(canonical))}\", not {item.Word}.");
            }
            else if (MeasureText.Read(item.Text, null, canonical, out Measure measure) is { } fault)
            {
                this.Context.Faults.Add(item, fault);
            }
            else
            {
                numbers.Add(this.Number(name, item, measure, canonical));
            }
        }

        return numbers;
    }

    internal double? OptionalNumber(string name, TradeUnit canonical) => this.Has(name) ? this.Number(name, canonical) : null;

    internal T Word<T>(string name, IReadOnlyList<(string Word, T Value)> words)
        where T : struct, Enum => this.Members.Word(name, words) ?? default;

    internal T OptionalWord<T>(string name, IReadOnlyList<(string Word, T Value)> words, T otherwise)
        where T : struct, Enum => this.Members.OptionalWord(name, words) ?? otherwise;

    internal T? ReadObject<T>(DocumentNode node, Func<FormReader, T?> read)
        where T : class => ObjectReader.Open(node, this.Context.Faults) is { } members ? read(new FormReader(members, this.Context, this.implied)) : null;

    internal Surface? ReadSurface(DocumentNode node) =>
        ObjectReader.Open(node, this.Context.Faults) is { } members ? this.Context.Forms.Surfaces.Read(new FormReader(members, this.Context)) : null;

    internal ILay? ReadLay(DocumentNode node, Surface? surface) =>
        ObjectReader.Open(node, this.Context.Faults) is { } members ? this.Context.Forms.Lays.Read(new FormReader(members, this.Context, surface)) : null;

    /// <summary>What a form refuses itself, at one of the members.</summary>
    internal static ArgumentException Refused(string member, string message) => new(message, member);

    /// <summary>Makes a part of what the object stands for from one of its members, within <see cref="Make{T}"/>: what is refused is told at that member.</summary>
    internal static T At<T>(string member, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            throw Refused(member, Bare(refused.Message));
        }
    }

    // The framework adds the name of the parameter, which the place says already; and how code writes a share is no advice
    // for a file, where 5 % may be written so.
    internal static string Bare(string message)
    {
        int tail = message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        string bare = tail < 0 ? message : message[..tail];
        int advice = bare.IndexOf("; write 0.", StringComparison.Ordinal);
        int end = advice < 0 ? -1 : bare.IndexOf(')', advice);
        return end < 0 ? bare : string.Concat(bare.AsSpan(0, advice), bare.AsSpan(end));
    }

    private string SurfaceKinds<TSurface>()
        where TSurface : Surface => string.Join(", ", this.Context.Forms.Surfaces.KindsOf(typeof(TSurface)).DefaultIfEmpty("a surface that has a form"));

    private static string List(IReadOnlyList<string> words) => string.Join(", ", words.Select(static word => $"'{word}'"));

    private static Measure Example(TradeUnit unit) => new(unit == TradeUnit.One ? 0.5 : 20, unit);

    private double Number(string name, DocumentNode node, Measure measure, TradeUnit canonical)
    {
        if (measure.Key.Unit != TradeUnits.Scale(canonical).Canonical)
        {
            this.Context.Faults.Add(node, $"'{DocumentTree.Short(node.Text)}' does not measure what '{name}' is: expected a number {(canonical == TradeUnit.One ? "without" : "with a")} unit, as in '{MeasureText.Exact(Example(canonical))}'; {TradeUnits.ThatDo(canonical)}.");
            return 1;
        }

        double number = measure.In(canonical);
        if (!double.IsFinite(number))
        {
            this.Context.Faults.Add(node, $"'{DocumentTree.Short(node.Text)}' is too large a number.");
            return 1;
        }

        this.Context.Keep(node, measure, number, canonical);
        return number;
    }

    private int CountOf(DocumentNode member, string name)
    {
        if (member.Kind == JsonValueKind.Number && int.TryParse(member.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int count))
        {
            return count;
        }

        this.Context.Faults.Add(member, $"'{name}' must be a whole number without quotes, as in 2.");
        return 1;
    }
}
