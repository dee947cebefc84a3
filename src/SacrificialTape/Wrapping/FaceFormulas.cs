using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of parallel strips on a flat face as the workings show them.</summary>
internal static class FaceFormulas
{
    private static readonly Basis Chords = Basis.FirstPrinciples(
        "a strip reaches the edge everywhere when it is as long as the longest chord within its own band; it may be left out where the opening's chord is longest over its whole band");

    private static readonly Basis Plane = Basis.FirstPrinciples("plane figures between two parallel lines");

    internal static Formula Chord { get; } = new(
        "face.chord",
        new Symbol("l_c", "Strip, as long as the longest chord within its band", TradeUnit.Millimeter),
        "2 * sqrt(max(0, R * R - y * y))",
        @"2\sqrt{R^2 - y^2}",
        Chords,
        [
            new Symbol("R", "radius of the disc", TradeUnit.Millimeter),
            new Symbol("y", "distance of the band from the middle of the disc, 0 if it lies over it", TradeUnit.Millimeter),
        ]);

    internal static Formula Gap { get; } = new(
        "face.gap",
        new Symbol("g", "Left out at a round opening", TradeUnit.Millimeter),
        "2 * sqrt(max(0, r * r - z * z))",
        @"2\sqrt{r^2 - z^2}",
        Chords,
        [
            new Symbol("r", "radius of the opening", TradeUnit.Millimeter),
            new Symbol("z", "distance from its middle to the farther edge of the band", TradeUnit.Millimeter),
        ]);

    internal static Formula Piece { get; } = new(
        "face.piece",
        new Symbol("l_p", "Piece of an interrupted strip", TradeUnit.Millimeter),
        "x_2 - x_1",
        "x_2 - x_1",
        Plane,
        [
            new Symbol("x_2", "its end, from the middle along the strip", TradeUnit.Millimeter),
            new Symbol("x_1", "its beginning, from the middle along the strip", TradeUnit.Millimeter),
        ]);

    internal static Formula DiscBand { get; } = new(
        "face.disc-band",
        new Symbol("B", "Disc or round opening within a band", TradeUnit.SquareMeter),
        "(R * R * (asin(b / R) - asin(a / R)) + b * sqrt(max(0, R * R - b * b)) - a * sqrt(max(0, R * R - a * a))) / 1e6",
        @"\frac{1}{10^{6}}\left[R^2\left(\arcsin\frac{b}{R} - \arcsin\frac{a}{R}\right) + b\sqrt{R^2-b^2} - a\sqrt{R^2-a^2}\right]",
        Plane,
        [
            new Symbol("R", "radius", TradeUnit.Millimeter),
            new Symbol("b", "upper edge of the band from the middle, at most the radius", TradeUnit.Millimeter),
            new Symbol("a", "lower edge of the band from the middle, at most the radius", TradeUnit.Millimeter),
        ]);

    internal static Formula Kept { get; } = new(
        "face.kept",
        new Symbol("q", "Share of the face that openings without a place leave", TradeUnit.One),
        "(A_p - A_o) / A_p",
        @"\frac{A_\mathrm{p} - A_\mathrm{o}}{A_\mathrm{p}}",
        Basis.FirstPrinciples("openings without a place take tape as the face does on average"),
        [
            new Symbol("A_p", "face less its hole and the openings with a place", TradeUnit.SquareMeter),
            new Symbol("A_o", "openings without a place", TradeUnit.SquareMeter),
        ]);

    internal static Formula OnSteel { get; } = new(
        "face.on-steel",
        new Symbol("S", "Tape that stays on the face, one pass", TradeUnit.SquareMeter),
        "q * T",
        "q\\,T",
        Plane,
        [
            Kept.Result,
            new Symbol("T", "sum over the strips: steel within the band of each, openings without a place and all", TradeUnit.SquareMeter),
        ]);

    internal static Formula Average { get; } = new(
        "face.layers-on-average",
        new Symbol("n_avg", "Layers on average", TradeUnit.One),
        "k * S / A",
        @"\frac{k\,S}{A}",
        Plane,
        [
            new Symbol("k", "passes", TradeUnit.One),
            OnSteel.Result,
            new Symbol("A", "area of the face", TradeUnit.SquareMeter),
        ]);

    internal static Formula Splices { get; } = new(
        "face.splices",
        new Symbol("z_s", "Splices in the pieces of one length, at least", TradeUnit.One),
        "m * (ceil(l / l_r) - 1)",
        @"m\left(\left\lceil\frac{l}{l_\mathrm{r}}\right\rceil - 1\right)",
        Basis.FirstPrinciples("a piece longer than its roll is put together from several; what a splice laps is left to the take-off"),
        [
            new Symbol("m", "pieces of this length", TradeUnit.One),
            new Symbol("l", "length of a piece", TradeUnit.Millimeter),
            new Symbol("l_r", "strip on a roll", TradeUnit.Millimeter),
        ]);
}
