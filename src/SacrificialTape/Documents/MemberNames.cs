using System.Text.Json;

namespace SacrificialTape.Documents;

/// <summary>
/// Names of members that were read before: a file says 'kind' ten thousand times, and one text does for all. Its places
/// are few and each holds the name that came last, so that a file of names that never come twice gains nothing and loses
/// nothing.
/// </summary>
internal sealed class MemberNames
{
    private const int Places = 256;

    private readonly string?[] seen = new string?[Places];

    /// <summary>The name that the reader stands at.</summary>
    internal string Of(ref Utf8JsonReader reader)
    {
        // Names with escapes are rare and are decoded each time.
        if (reader.ValueIsEscaped)
        {
            return reader.GetString()!;
        }

        uint hash = 2166136261;
        foreach (byte b in reader.ValueSpan)
        {
            hash = (hash ^ b) * 16777619;
        }

        ref string? place = ref this.seen[hash % Places];
        return place is not null && reader.ValueTextEquals(place) ? place : place = reader.GetString()!;
    }
}
