using System.Text.Json;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Files.Folders;

/// <summary>The file that says of which study a folder is, part by part.</summary>
internal static class FolderManifest
{
    internal const string Name = "study.json";

    internal static void Write(Stream stream, StudyIdentity identity)
    {
        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true });
        json.WriteStartObject();
        json.WriteString("fingerprint", identity.Fingerprint);
        json.WriteStartArray("study");
        foreach (KeyValuePair<string, string> part in identity.Parts)
        {
            json.WriteStartArray();
            json.WriteStringValue(part.Key);
            json.WriteStringValue(part.Value);
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>The parts of a folder's study; null where the folder says nothing yet.</summary>
    internal static ValueList<KeyValuePair<string, string>>? Read(string path)
    {
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            using FileStream stream = File.OpenRead(path);
            using var json = JsonDocument.Parse(stream);
            return [.. json.RootElement.GetProperty("study").EnumerateArray().Select(static part =>
                new KeyValuePair<string, string>(part[0].GetString()!, part[1].GetString()!))];
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or KeyNotFoundException or IndexOutOfRangeException)
        {
            throw new InvalidOperationException(
                $"'{path}' is damaged, so it cannot be said which study the folder is of. Name another folder, or delete that file: "
                + "each slice says itself which study it is of, and is checked.", e);
        }
    }

    /// <summary>Where two studies differ, in words; the first few places.</summary>
    internal static string Differences(ValueList<KeyValuePair<string, string>> there, ValueList<KeyValuePair<string, string>> here)
    {
        var left = there.ToDictionary(StringComparer.Ordinal);
        var right = here.ToDictionary(StringComparer.Ordinal);
        string[] all = [.. left.Keys.Union(right.Keys).Where(key => left.GetValueOrDefault(key) != right.GetValueOrDefault(key)).Select(key =>
            $"{key}: there {left.GetValueOrDefault(key, "none")}, here {right.GetValueOrDefault(key, "none")}")];
        return all.Length == 0 ? "the same parts in another order" : string.Join("; ", all.Take(4)) + (all.Length > 4 ? $"; and {all.Length - 4} more" : string.Empty);
    }
}
