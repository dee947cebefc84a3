using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <content>Paint over zinc.</content>
internal static partial class Sources
{
    internal static SourceReference DuplexArticle { get; } = new(
        "duplex-article-2013",
        "Article on duplex systems of a galvanizer, February 2013",
        "synergistic effect",
        "Zinc 40 and paint 10 years: at least 75 years, 1.5 times the sum",
        SourceReading.FirstHand);

    internal static SourceReference DuplexGalvanizer { get; } = new(
        "duplex-galvanizer-2025",
        "Article on duplex systems of a galvanizer, 2025",
        "the science behind duplex systems",
        "Paint 10 and zinc 70 years: 120 to 184 years",
        SourceReading.FirstHand);
}
