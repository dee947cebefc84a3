using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <content>Contact over paint.</content>
internal static partial class Sources
{
    internal static SourceReference SecondResistivityTable { get; } = new(
        "resistivity-table-engineering-notes",
        "Table of resistivity and conductivity of an engineer's notes (kutayzorlu.com)",
        "zinc; carbon steel (1010), an excerpt",
        "At 20 degC: zinc 5.90e-8, carbon steel (1010) 1.43e-7 ohm.m",
        SourceReading.FirstHand);
}
