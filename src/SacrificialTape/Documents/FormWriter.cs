using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>Writes the members of one object of a document, so that a <see cref="FormReader"/> takes them back to the last bit.</summary>
/// <remarks>Measures are written in the unit their author gave, where the document still knows it.</remarks>
public sealed class FormWriter
{
    private readonly DocumentWriter json;
    private readonly Surface? implied;

    internal FormWriter(DocumentWriter json, WritingContext context, string place, Surface? implied = null)
    {
        this.json = json;
        this.Context = context;
        this.Place = place;
        this.implied = implied;
    }

    /// <summary>Where the object stands in the document, for messages.</summary>
    public string Place { get; }

    internal WritingContext Context { get; }

    /// <summary>Writes a text.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="text">The text, not empty.</param>
    /// <exception cref="ArgumentException">The text is empty, or holds half of a surrogate pair.</exception>
    public void Text(string name, string text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            throw new ArgumentException($"{this.Place}: '{name}' is empty and would not be read back.", nameof(text));
        }

        this.json.Text(name, text);
    }

    /// <summary>Writes a text where there is one.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="text">The text; null to write nothing.</param>
    public void OptionalText(string name, string? text)
    {
        if (text is not null)
        {
            this.Text(name, text);
        }
    }

    /// <summary>Writes true; false is left out.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="value">The value.</param>
    public void Flag(string name, bool value)
    {
        if (value)
        {
            this.json.Flag(name);
        }
    }

    /// <summary>Writes a whole number.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="count">The number.</param>
    public void Count(string name, int count) => this.json.Number(name, count);

    /// <summary>Writes a measure in the unit its author gave, otherwise in one of its kind that keeps its bits.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="measure">The measure.</param>
    public void Measure(string name, Measure measure) => this.Number(name, measure.Number, measure.Unit);

    /// <summary>Writes a length.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="length">The length.</param>
    public void Length(string name, Length length) => this.Number(name, UnitConversions.Millimeters(length), TradeUnit.Millimeter);

    /// <summary>Writes an angle.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="angle">The angle.</param>
    public void Angle(string name, Angle angle) => this.Number(name, UnitConversions.Degrees(angle), TradeUnit.Degree);

    /// <summary>Writes an area.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="area">The area.</param>
    public void Area(string name, Area area) => this.Number(name, UnitConversions.SquareMeters(area), TradeUnit.SquareMeter);

    /// <summary>Writes a number without unit as text.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="number">The number.</param>
    public void Number(string name, double number) => this.Number(name, number, TradeUnit.One);

    /// <summary>Writes a surface by its form.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="surface">The surface.</param>
    /// <exception cref="ArgumentException">Its type has no form.</exception>
    public void Surface(string name, Surface surface)
    {
        ArgumentNullException.ThrowIfNull(surface);
        if (this.implied is { } around && SurfaceBits.Same(surface, around))
        {
            return;
        }

        this.Object(name, surface, this.Context.Forms.Surfaces.Write, null);
    }

    /// <summary>Writes the name of a strip.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="stock">The strip.</param>
    /// <exception cref="ArgumentException">The document does not list the strip.</exception>
    public void Stock(string name, StripStock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        this.Text(name, this.Context.NameOf(stock) ?? throw new ArgumentException($"{this.Place}: the document does not list the stock {stock}.", nameof(stock)));
    }

    /// <summary>Writes end lap, wander, passes and method.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="choices">The choices.</param>
    public void Choices(string name, LayChoices choices) => this.Object(name, choices, LayChoicesForm.Write);

    /// <summary>Writes a lay by its form; its surface is left out where it is the very one it lies on.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="lay">The lay.</param>
    /// <param name="surface">The surface that a reader will know; null where the lay states its own.</param>
    /// <exception cref="ArgumentException">Its type has no form.</exception>
    public void Lay(string name, ILay lay, Surface? surface = null)
    {
        ArgumentNullException.ThrowIfNull(lay);
        this.Object(name, lay, this.Context.Forms.Lays.Write, surface);
    }

    /// <summary>Writes an object by a writer of its own.</summary>
    /// <typeparam name="T">What it stands for.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <param name="thing">What it stands for.</param>
    /// <param name="write">Writes its members.</param>
    public void Object<T>(string name, T thing, Action<FormWriter, T> write)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(thing);
        ArgumentNullException.ThrowIfNull(write);
        this.Object(name, thing, write, this.implied);
    }

    /// <summary>Writes a list of objects; an empty one is left out.</summary>
    /// <typeparam name="T">What each stands for.</typeparam>
    /// <param name="name">Name of the member.</param>
    /// <param name="things">What they stand for.</param>
    /// <param name="write">Writes the members of one.</param>
    public void List<T>(string name, IReadOnlyCollection<T> things, Action<FormWriter, T> write)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(write);
        this.List(name, things, write, this.implied, null);
    }

    /// <summary>Writes a list of texts; an empty one is left out.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="texts">The texts.</param>
    public void Texts(string name, IReadOnlyCollection<string> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        if (texts.Count > 0)
        {
            this.json.OpenList(name);
            foreach (string text in texts)
            {
                this.json.Item(text);
            }

            this.json.CloseList();
        }
    }

    internal void Number(string name, double number, TradeUnit canonical) =>
        this.json.Measure(name, this.Context.AsGiven(this.Place, name, number, canonical));

    internal void Numbers(string name, IEnumerable<double> numbers, TradeUnit canonical)
    {
        this.json.OpenList(name);
        string place = DocumentTree.Member(this.Place, name);
        int at = 0;
        foreach (double number in numbers)
        {
            this.json.Item(MeasureText.Exact(this.Context.AsGiven(FormattableString.Invariant($"{place}[{at++}]"), null, number, canonical)));
        }

        this.json.CloseList();
    }

    internal void Time(string name, DateTimeOffset time) => this.json.Time(name, time);

    internal void Day(string name, DateOnly day) => this.json.Day(name, day);

    internal void Word<T>(string name, T value, IReadOnlyList<(string Word, T Value)> words)
        where T : struct, Enum => this.json.Text(name, Words.Of(words, value));

    internal void OptionalWord<T>(string name, T value, IReadOnlyList<(string Word, T Value)> words, T otherwise)
        where T : struct, Enum
    {
        if (!value.Equals(otherwise))
        {
            this.Word(name, value, words);
        }
    }

    internal void Object<T>(string name, T thing, Action<FormWriter, T> write, Surface? surface)
    {
        this.json.Open(name);
        write(new FormWriter(this.json, this.Context, DocumentTree.Member(this.Place, name), surface), thing);
        this.json.Close();
    }

    internal void List<T>(string name, IReadOnlyCollection<T> things, Action<FormWriter, T> write, Surface? surface, Func<T, string>? named)
    {
        if (things.Count == 0)
        {
            return;
        }

        this.json.OpenList(name);
        string place = DocumentTree.Member(this.Place, name);
        int at = 0;
        foreach (T thing in things)
        {
            this.json.Open();
            string own = named is null ? FormattableString.Invariant($"{place}[{at++}]") : ReadingContext.Key(name, named(thing));
            write(new FormWriter(this.json, this.Context, own, surface), thing);
            this.json.Close();
        }

        this.json.CloseList();
    }

    /// <summary>Writes lays, each on the surface of the same number.</summary>
    internal void Lays(string name, ValueList<ILay> lays, IReadOnlyList<Surface> surfaces)
    {
        this.json.OpenList(name);
        for (int i = 0; i < lays.Count; i++)
        {
            this.json.Open();
            string own = FormattableString.Invariant($"{DocumentTree.Member(this.Place, name)}[{i}]");
            this.Context.Forms.Lays.Write(new FormWriter(this.json, this.Context, own, surfaces[i]), lays[i]);
            this.json.Close();
        }

        this.json.CloseList();
    }

    internal void Raw(Action<DocumentWriter> write) => write(this.json);
}
