using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of lays on surfaces of revolution as the workings show them.</summary>
internal static class RevolvedFormulas
{
    private static readonly Basis Cone = Basis.From(
        References.ClairautRelation, "the cone that touches the surface there unrolls flat; exact on cones, cylinders and discs, on the safe side on surfaces that bulge outward");

    private static readonly Basis Along = Basis.FirstPrinciples("lengths along the meridian");

    private static readonly Basis Counting = Basis.FirstPrinciples("as many strips as touch each other with the lap where the circle round the axis is largest");

    private static readonly Basis Jacobi = Basis.From(References.JacobiEquation, "the greatest curvature under the strip, which gives the most pucker");

    private static readonly Basis Circles = Basis.FirstPrinciples("each line along the ring is as long as the circle that it lies on");

    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Lap = new("o", "least lap", TradeUnit.Millimeter);
    private static readonly Symbol Count = new("n", "Strips side by side round the low edge", TradeUnit.One);
    private static readonly Symbol Meridian = new("S", "Meridian, from the low edge to the crown or the small end", TradeUnit.Millimeter);
    private static readonly Symbol Opening = new("a", "Opening that the disc on the crown closes, from the crown along the steel", TradeUnit.Millimeter);
    private static readonly Symbol Half = new("b", "Half a gore without its lap, where it is widest", TradeUnit.Millimeter);
    private static readonly Symbol Most = new("m", "slope at the crown or the small end, the steepest: how fast the radius shrinks along the steel", TradeUnit.One);
    private static readonly Symbol StripLength = new("L", "Strip from the low edge to its end", TradeUnit.Millimeter);
    private static readonly Symbol EndLap = new("e", "end lap", TradeUnit.Millimeter);
    private static readonly Symbol WidestRadius = new("r_b", "radius where the gore is widest", TradeUnit.Millimeter);
    private static readonly Symbol WidestSlope = new("m_b", "slope there", TradeUnit.One);
    private static readonly Symbol WidestChord = new("c_b", "what straight cuts between the stations would lose there", TradeUnit.Millimeter);
    private static readonly Symbol CountRadius = new("r_n", "radius of the station that asks for the most gores", TradeUnit.Millimeter);
    private static readonly Symbol CountSlope = new("m_n", "slope there", TradeUnit.One);
    private static readonly Symbol CountChord = new("c_n", "what straight cuts between the stations would lose there", TradeUnit.Millimeter);
    private static readonly Symbol Least = new("n_0", "gores that the low edge alone asks for, at least 3; or the first number tried after it that fits", TradeUnit.One);

    internal static Formula Length { get; } = new(
        "revolved.meridian", Meridian, "s_1 + s_2", "s_1 + s_2", Along,
        [
            new Symbol("s_1", "straight flange", TradeUnit.Millimeter),
            new Symbol("s_2", "dish or cone along the steel, its section integrated", TradeUnit.Millimeter),
        ]);

    internal static Formula DiscOpening { get; } = new(
        "revolved.disc-opening", Opening, "w / 2 - min(o, w / 4)", @"\frac{w}{2} - \min\left(o, \frac{w}{4}\right)",
        Basis.FirstPrinciples("a disc as wide as the strip laps on all that ends under it"), [Width, Lap]);

    internal static Formula GoreCount { get; } = new(
        "revolved.gore-count",
        Count,
        "max(n_0, ceil(pi * m_n / atan(m_n / r_n * ((w - o) / 2 - c_n))))",
        @"\max\left(n_0, \left\lceil \frac{\pi\,m_n}{\arctan\left(\frac{m_n}{r_n}\left(\frac{w-o}{2} - c_n\right)\right)} \right\rceil\right)",
        Cone,
        [Least, CountSlope, CountRadius, Width, Lap, CountChord]);

    internal static Formula GoreCountStraight { get; } = new(
        "revolved.gore-count-straight",
        Count,
        "max(n_0, ceil(pi * r_n / ((w - o) / 2 - c_n)))",
        @"\max\left(n_0, \left\lceil \frac{\pi\,r_n}{\frac{w-o}{2} - c_n} \right\rceil\right)",
        Cone,
        [Least, CountRadius, Width, Lap, CountChord]);

    internal static Formula GoreHalf { get; } = new(
        "revolved.gore-half", Half, "r_b / m_b * tan(m_b * pi / n) + c_b", @"\frac{r_b}{m_b}\tan\frac{m_b\,\pi}{n} + c_b", Cone,
        [WidestRadius, WidestSlope, Count, WidestChord]);

    internal static Formula GoreHalfStraight { get; } = new(
        "revolved.gore-half-straight", Half, "r_b * pi / n + c_b", @"\frac{\pi\,r_b}{n} + c_b", Cone, [WidestRadius, Count, WidestChord]);

    internal static Formula GoreLap { get; } = new(
        "revolved.gore-lap", new Symbol("o_eq", "Lap, equalised", TradeUnit.Millimeter), "w - 2 * b", "w - 2b",
        Basis.FirstPrinciples("the gore is as wide as the strip where it is widest"), [Width, Half]);

    internal static Formula LengthToDisc { get; } = new(
        "revolved.length-to-disc", StripLength, "S - a * cos(m * pi / n_c)", @"S - a\cos\frac{m\,\pi}{n_c}", Cone,
        [Meridian, Opening, Most, new Symbol("n_c", "strips that reach the crown", TradeUnit.One)]);

    internal static Formula LengthPastEnd { get; } = new(
        "revolved.length-past-end",
        StripLength,
        "S + r_2 / m * (1 - cos(m * u * pi / n_c))",
        @"S + \frac{r_2}{m}\left(1 - \cos\frac{m\,u\,\pi}{n_c}\right)",
        Cone,
        [
            Meridian,
            new Symbol("r_2", "radius of the small end", TradeUnit.Millimeter),
            Most,
            new Symbol("u", "layers counted in one pass, at least 1", TradeUnit.One),
            new Symbol("n_c", "strips that reach the small end", TradeUnit.One),
        ]);

    internal static Formula LengthOfCylinder { get; } = new(
        "revolved.length-of-cylinder", StripLength, "S", "S", Along, [Meridian]);

    internal static Formula StagedCount { get; } = new(
        "revolved.staged-count", Count, "q * ceil(max(3, n_1) / q)", @"q\left\lceil\frac{\max(3, n_1)}{q}\right\rceil", Counting,
        [
            new Symbol("n_1", "strips that the low edge asks for", TradeUnit.One),
            new Symbol("q", "2 for each stage, multiplied, so that every second strip can stop at each", TradeUnit.One),
        ]);

    internal static Formula StageRadius { get; } = new(
        "revolved.stage-radius",
        new Symbol("r_j", "Radius where the rest of the strips suffice", TradeUnit.Millimeter),
        "n_j * (w - o) / (2 * pi)",
        @"\frac{n_j\,(w-o)}{2\pi}",
        Counting,
        [new Symbol("n_j", "strips that go on", TradeUnit.One), Width, Lap]);

    internal static Formula StageLength { get; } = new(
        "revolved.stage-length",
        new Symbol("L_j", "Strip that stops at the stage", TradeUnit.Millimeter),
        "s_j + r_s / m * (1 / cos(m * pi / (2 * n_j)) - 1) + e",
        @"s_j + \frac{r_s}{m}\left(\frac{1}{\cos\frac{m\,\pi}{2 n_j}} - 1\right) + e",
        Cone,
        [
            new Symbol("s_j", "where that is, from the low edge along the steel", TradeUnit.Millimeter),
            new Symbol("r_s", "radius of the steel there", TradeUnit.Millimeter),
            Most,
            new Symbol("n_j", "strips that go on", TradeUnit.One),
            EndLap,
        ]);

    internal static Formula LeastLap { get; } = new(
        "revolved.least-lap",
        new Symbol("o_min", "Least lap anywhere", TradeUnit.Millimeter),
        "min(o_eq, o_q)",
        @"\min(o_\mathrm{eq}, o_q)",
        Counting,
        [
            new Symbol("o_eq", "lap at the low edge", TradeUnit.Millimeter),
            new Symbol("o_q", "least lap at the disc and where strips have stopped; that of the low edge without either", TradeUnit.Millimeter),
        ]);

    internal static Formula Layers { get; } = new(
        "revolved.layers",
        new Symbol("n_all", "Layers everywhere", TradeUnit.One),
        "k * min(u_max, floor(w / (w - o_min + delta)))",
        @"k\,\min\left(u_\mathrm{max}, \left\lfloor\frac{w}{w-o_\mathrm{min}+\delta}\right\rfloor\right)",
        Basis.FirstPrinciples("under the disc, at cut edges and where strips stop lies one strip only; layers are counted at the low edge, where strips stand farthest apart"),
        [
            new Symbol("k", "passes", TradeUnit.One),
            new Symbol("u_max", "most layers counted in one pass", TradeUnit.One),
            Width,
            new Symbol("o_min", "least lap anywhere", TradeUnit.Millimeter),
            new Symbol("delta", "hand wander", TradeUnit.Millimeter),
        ]);

    internal static Formula Pucker { get; } = new(
        "revolved.pucker",
        new Symbol("e_m", "Edge too long beside the meridian: pucker", TradeUnit.One),
        "1 - cos(min(pi / 2, b_p / 1000 * sqrt(K)))",
        @"1 - \cos\min\left(\frac{\pi}{2}, \frac{b_p}{1000}\sqrt{K}\right)",
        Jacobi,
        [
            new Symbol("b_p", "half the strip where that is most", TradeUnit.Millimeter),
            new Symbol("K", "greatest Gaussian curvature from there to the low edge, per square metre", TradeUnit.One),
        ]);

    internal static Formula DiscPucker { get; } = new(
        "revolved.disc-pucker",
        new Symbol("e_d", "Edge of the disc too long round the crown: pucker", TradeUnit.One),
        "1 - r_d / (w / 2)",
        @"1 - \frac{2 r_d}{w}",
        Circles,
        [new Symbol("r_d", "radius of the circle that the edge of the disc lies on; half the strip for a disc slit and lapped on a tip", TradeUnit.Millimeter), Width]);

    internal static Formula MostPucker { get; } = new(
        "revolved.most-pucker", new Symbol("e_p", "Most pucker", TradeUnit.One), "max(e_m, e_d)", @"\max(e_m, e_d)", Circles,
        [Pucker.Result, DiscPucker.Result]);

    internal static Formula WidestForPucker { get; } = new(
        "revolved.widest-for-pucker",
        new Symbol("w_p", "Widest strip for the allowed pucker", TradeUnit.Millimeter),
        "2000 * acos(1 - e_a) / sqrt(K)",
        @"\frac{2000\arccos(1-e_a)}{\sqrt{K}}",
        Jacobi,
        [
            new Symbol("e_a", "allowed pucker", TradeUnit.One),
            new Symbol("K", "greatest Gaussian curvature, per square metre", TradeUnit.One),
        ]);

    internal static Formula RingSpan { get; } = new(
        "revolved.ring-span", new Symbol("W", "Meridian to be covered by rings", TradeUnit.Millimeter), "S - a", "S - a", Along,
        [Meridian, new Symbol("a", "opening that the disc on the crown closes; zero without one", TradeUnit.Millimeter)]);

    internal static Formula RingLength { get; } = new(
        "revolved.ring-length", new Symbol("L_r", "Strip of the ring", TradeUnit.Millimeter), "2 * pi * r_w + e", @"2\pi r_w + e", Circles,
        [new Symbol("r_w", "radius at the ring's wider edge", TradeUnit.Millimeter), EndLap]);

    internal static Formula RingPucker { get; } = new(
        "revolved.ring-pucker",
        new Symbol("e_c", "Edge toward the crown too long: pucker", TradeUnit.One),
        "max(0, 1 - r_c / r_m)",
        @"\max\left(0, 1 - \frac{r_c}{r_m}\right)",
        Circles,
        [
            new Symbol("r_c", "radius at the edge toward the crown", TradeUnit.Millimeter),
            new Symbol("r_m", "radius at the middle of the ring", TradeUnit.Millimeter),
        ]);

    internal static Formula RingStretch { get; } = new(
        "revolved.ring-stretch",
        new Symbol("e_r", "Edge toward the low end too short: stretch", TradeUnit.One),
        "max(0, r_r / r_q - 1)",
        @"\max\left(0, \frac{r_r}{r_q} - 1\right)",
        Circles,
        [
            new Symbol("r_r", "radius at the edge toward the low end", TradeUnit.Millimeter),
            new Symbol("r_q", "radius at the middle of that ring", TradeUnit.Millimeter),
        ]);
}
