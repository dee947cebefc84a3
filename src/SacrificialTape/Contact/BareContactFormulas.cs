using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Contact;

/// <summary>The formulas of bare contact over paint as the workings show them.</summary>
internal static class BareContactFormulas
{
    private static readonly Basis Share = Basis.FirstPrinciples("bare area over covered area");

    internal static Formula Ratio { get; } = new(
        "contact.bare-ratio",
        new Symbol("q", "Bare steel under the tape", TradeUnit.SquareCentimeterPerSquareMeter),
        "min(1, n * a / A) * 10000",
        @"\frac{10^{4}\,n\,a}{A}",
        Share,
        [
            new Symbol("n", "windows", TradeUnit.One),
            new Symbol("a", "bare area of one window", TradeUnit.SquareMeter),
            new Symbol("A", "area covered", TradeUnit.SquareMeter),
        ]);

    internal static Formula WindowsNeeded { get; } = new(
        "contact.windows-needed",
        new Symbol("n", "Windows needed", TradeUnit.One),
        "ceil(q * A / (a * 10000))",
        @"\left\lceil\frac{q\,A}{10^{4}\,a}\right\rceil",
        Share,
        [
            new Symbol("q", "bare steel wanted", TradeUnit.SquareCentimeterPerSquareMeter),
            new Symbol("A", "area covered", TradeUnit.SquareMeter),
            new Symbol("a", "bare area of one window", TradeUnit.SquareMeter),
        ]);
}
