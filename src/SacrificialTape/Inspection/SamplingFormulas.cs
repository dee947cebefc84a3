using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>The formulas of how many readings as the workings show them.</summary>
internal static class SamplingFormulas
{
    private static readonly Symbol Area = new("A", "area", TradeUnit.SquareMeter);
    private static readonly Symbol Readings = new("n", "Readings or spots", TradeUnit.One);

    internal static Formula Iso19840 { get; } = new(
        "sampling.iso-19840", Readings, "n_t + 10 * ceil(max(0, A - 100) / 100)", @"n_t + 10\left\lceil\frac{\max(0,A-100)}{100}\right\rceil",
        Basis.From(References.SamplingComparison, "5 readings up to 1 m2 are recalled, check before use; written for paint"),
        [new Symbol("n_t", "readings in the first 100 m2, by the table", TradeUnit.One), Area]);

    internal static Formula SspcPa2 { get; } = new(
        "sampling.sspc-pa-2", Readings, "5 * (n_t + ceil(max(0, A - 100) / 100))", @"5\left(n_t + \left\lceil\frac{\max(0,A-100)}{100}\right\rceil\right)",
        Basis.From(References.SamplingPa2, "written for paint"),
        [new Symbol("n_t", "areas of 10 m2 in the first 100 m2", TradeUnit.One), Area]);

    internal static Formula As38943 { get; } = new(
        "sampling.as-3894-3", Readings, "n_t + 5 * ceil(max(0, A - 100) / 100)", @"n_t + 5\left\lceil\frac{\max(0,A-100)}{100}\right\rceil",
        Basis.From(References.SamplingComparison, "as quoted there; written for paint"),
        [new Symbol("n_t", "readings in the first 100 m2, by the table", TradeUnit.One), Area]);

    internal static Formula ImoPspc { get; } = new(
        "sampling.imo-pspc", Readings, "ceil(A / 5)", @"\left\lceil\frac{A}{5}\right\rceil",
        Basis.From(References.SamplingComparison, "flat surface, as quoted there; written for paint"), [Area]);

    internal static Formula Stations { get; } = new(
        "sampling.stations", Readings, "(ceil(L / s) + 1) * k", @"\left(\left\lceil\frac{L}{s}\right\rceil + 1\right) k",
        Basis.FirstPrinciples("stations no farther apart than stated, one at each end; the spacing is the user's own"),
        [
            new Symbol("L", "length of the line", TradeUnit.Millimeter),
            new Symbol("s", "farthest apart", TradeUnit.Millimeter),
            new Symbol("k", "readings round each station", TradeUnit.One),
        ]);
}
