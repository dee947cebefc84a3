using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <content>Statistics of readings.</content>
internal static partial class Sources
{
    internal static SourceReference CompositeFactors { get; } = new(
        "cmh-17-1g-factors",
        "CMH-17-1G, Composite Materials Handbook, volume 1",
        "tables of kB and kA, and of ranks, as reproduced in the validation of a statistics package",
        "One-sided factors for coverage 0.90 and 0.99 with 95 % confidence; 29 and 299 readings for the lowest",
        SourceReading.SecondHand);
}
