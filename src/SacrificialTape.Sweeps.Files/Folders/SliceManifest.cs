using System.Globalization;
using System.Text.Json;

namespace SacrificialTape.Sweeps.Files.Folders;

/// <summary>
/// What is written last of a slice: of which study and which rows it is, what its file must hash to, and its summaries. Without it,
/// or when its own seal does not fit, there is no slice.
/// </summary>
internal sealed record SliceManifest(
    string Identity, int Slice, long FirstRow, long Rows, long Bytes, string Hash, IReadOnlyList<byte[]> Summaries)
{
    // The seal is over every field, so that no damage to the manifest itself passes.
    private string Seal => StudyIdentity.Hash(string.Join('\n', [
        this.Identity,
        .. new[] { this.Slice, this.FirstRow, this.Rows, this.Bytes }.Select(static number => number.ToString(CultureInfo.InvariantCulture)),
        this.Hash,
        .. this.Summaries.Select(Convert.ToBase64String),
    ]));

    internal void Write(Stream stream)
    {
        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true });
        json.WriteStartObject();
        json.WriteString("study", this.Identity);
        json.WriteNumber("slice", this.Slice);
        json.WriteNumber("firstRow", this.FirstRow);
        json.WriteNumber("rows", this.Rows);
        json.WriteNumber("bytes", this.Bytes);
        json.WriteString("sha256", this.Hash);
        json.WriteStartArray("summaries");
        foreach (byte[] summary in this.Summaries)
        {
            json.WriteBase64StringValue(summary);
        }

        json.WriteEndArray();
        json.WriteString("seal", this.Seal);
        json.WriteEndObject();
    }

    /// <summary>Reads a manifest; null where there is none or it is damaged.</summary>
    internal static SliceManifest? Read(string path)
    {
        try
        {
            using FileStream stream = File.OpenRead(path);
            using var json = JsonDocument.Parse(stream);
            JsonElement root = json.RootElement;
            var manifest = new SliceManifest(
                root.GetProperty("study").GetString()!,
                root.GetProperty("slice").GetInt32(),
                root.GetProperty("firstRow").GetInt64(),
                root.GetProperty("rows").GetInt64(),
                root.GetProperty("bytes").GetInt64(),
                root.GetProperty("sha256").GetString()!,
                [.. root.GetProperty("summaries").EnumerateArray().Select(static one => one.GetBytesFromBase64())]);
            return root.GetProperty("seal").GetString() == manifest.Seal ? manifest : null;
        }
        catch (Exception e) when (e is FileNotFoundException or JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            return null;
        }
    }
}
