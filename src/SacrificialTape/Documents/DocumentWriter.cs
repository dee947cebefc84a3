using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Writes a document as indented JSON that a person can read and a reader takes back unchanged.</summary>
internal sealed class DocumentWriter : IDisposable
{
    /// <summary>To the last tick, with the distance from UTC that was noted.</summary>
    internal const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz";

    // The files are read by people and by this library, never pasted into a page: only what JSON itself asks for is escaped.
    private static readonly JsonWriterOptions Plain =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly ArrayBufferWriter<byte> buffer = new();
    private readonly Utf8JsonWriter json;

    internal DocumentWriter() => this.json = new Utf8JsonWriter(this.buffer, Plain);

    public void Dispose() => this.json.Dispose();

    internal void Open(string? name = null)
    {
        if (name is null)
        {
            this.json.WriteStartObject();
        }
        else
        {
            this.json.WriteStartObject(name);
        }
    }

    internal void Close() => this.json.WriteEndObject();

    internal void OpenList(string name) => this.json.WriteStartArray(name);

    internal void CloseList() => this.json.WriteEndArray();

    internal void Text(string name, string text) => this.json.WriteString(name, WellFormed(text));

    internal void Item(string text) => this.json.WriteStringValue(WellFormed(text));

    internal void Flag(string name) => this.json.WriteBoolean(name, true);

    internal void Number(string name, int number) => this.json.WriteNumber(name, number);

    internal void Measure(string name, Measure measure) => this.Text(name, MeasureText.Exact(measure));

    internal void Time(string name, DateTimeOffset time) => this.Text(name, time.ToString(TimeFormat, CultureInfo.InvariantCulture));

    internal void Day(string name, DateOnly day) => this.Text(name, ValidityPeriod.Day(day));

    /// <summary>The whole text, with a line end after the last brace.</summary>
    internal string Finish()
    {
        this.json.Flush();
        return Encoding.UTF8.GetString(this.buffer.WrittenSpan) + "\n";
    }

    // JSON cannot carry half of a surrogate pair, and the writer would put a replacement in its place: a loss in silence.
    private static string WellFormed(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsSurrogate(text[i]) && !(char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[++i])))
            {
                throw new ArgumentException($"A text holds half of a surrogate pair at character {i} and cannot be written as JSON.", nameof(text));
            }
        }

        return text;
    }
}
