using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of a spiral on a bend as the workings show them.</summary>
internal static class BendSpiralFormulas
{
    private static readonly Basis Outside = Basis.FirstPrinciples(
        "turns stand farthest apart on the outside; whole turns, so that the strip crosses both tangents on the outside, in the direction that it has on the straight pipe");

    private static readonly Basis Path = Basis.FirstPrinciples(
        "arc length of a path whose bend angle goes in proportion to its tube angle, on the torus ds^2 = r^2 dt^2 + (R + r cos t)^2 dphi^2");

    private static readonly Basis Liouville = Basis.From(References.GeodesicCurvature);

    private static readonly Basis Jacobi = Basis.From(References.JacobiEquation);

    private static readonly Basis Edge = Basis.FirstPrinciples(
        "to first order an edge is too long or too short by the curvature of its surface and by the sideways curvature of its path together");

    private static readonly Symbol Tube = new("r", "radius of the pipe", TradeUnit.Millimeter);
    private static readonly Symbol Radius = new("R", "bend radius", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Arc = new("W", "arc along the outside", TradeUnit.Millimeter);
    private static readonly Symbol Turns = new("n_t", "Turns on the bend", TradeUnit.One);
    private static readonly Symbol Circumference = new("C", "circumference", TradeUnit.Millimeter);
    private static readonly Symbol OnOutside = new("p_out", "Advance along the outside", TradeUnit.Millimeter);
    private static readonly Symbol OnInside = new("p_in", "Advance along the inside", TradeUnit.Millimeter);
    private static readonly Symbol Ratio = new("c", "Bend angle over tube angle", TradeUnit.One);
    private static readonly Symbol Tubes = new("t", "tube angle from the outside where the edge is strained most", TradeUnit.Degree);
    private static readonly Symbol Sideways = new("e_g", "Strain of an edge by the sideways curvature of its path", TradeUnit.One);
    private static readonly Symbol Gauss = new("e_K", "Strain of an edge by the curvature of the surface; below zero too long", TradeUnit.One);

    internal static Formula TurnCount { get; } = new(
        "bend-spiral.turns", Turns, "ceil(W / p)", @"\left\lceil\frac{W}{p}\right\rceil", Outside,
        [Arc, new Symbol("p", "advance of the spiral with the least lap on straight pipe", TradeUnit.Millimeter)]);

    internal static Formula OutsideAdvance { get; } = new(
        "bend-spiral.outside-advance", OnOutside, "W / n_t", @"\frac{W}{n_\mathrm{t}}", Outside, [Arc, Turns]);

    internal static Formula InsideAdvance { get; } = new(
        "bend-spiral.inside-advance", OnInside, "p_out * (R - r) / (R + r)", @"p_\mathrm{out}\frac{R-r}{R+r}",
        Basis.FirstPrinciples("arcs of one angle go with their distance from the centre of the bend"), [OnOutside, Radius, Tube]);

    internal static Formula OutsideAngle { get; } = new(
        "bend-spiral.outside-angle", new Symbol("theta_out", "Angle between strip and ring on the outside", TradeUnit.Degree),
        "atan(p_out / C) * 180 / pi", @"\arctan\frac{p_\mathrm{out}}{C}", Outside, [OnOutside, Circumference]);

    internal static Formula OutsideLap { get; } = new(
        "bend-spiral.outside-lap", new Symbol("o_out", "True lap on the outside", TradeUnit.Millimeter),
        "w - p_out * C / sqrt(C * C + p_out * p_out)", @"w - \frac{p_\mathrm{out}\,C}{\sqrt{C^2+p_\mathrm{out}^2}}",
        Basis.FirstPrinciples("the bend's outside unrolled; everywhere else on the bend lengths are shorter than on the cylinder that touches it there, so that laps are no less"),
        [Width, OnOutside, Circumference]);

    internal static Formula InsideLap { get; } = new(
        "bend-spiral.inside-lap", new Symbol("o_in", "True lap on the inside", TradeUnit.Millimeter),
        "w - p_in * C / sqrt(C * C + p_in * p_in)", @"w - \frac{p_\mathrm{in}\,C}{\sqrt{C^2+p_\mathrm{in}^2}}",
        Basis.FirstPrinciples("the cylinder that touches the bend along its inside, unrolled"),
        [Width, OnInside, Circumference]);

    internal static Formula Layers { get; } = new(
        "bend-spiral.layers", new Symbol("n_all", "Layers everywhere", TradeUnit.One),
        "k * floor(w / (w - o_out + delta))", @"k\left\lfloor\frac{w}{w-o_\mathrm{out}+\delta}\right\rfloor", Outside,
        [
            new Symbol("k", "passes", TradeUnit.One), Width, new Symbol("o_out", "true lap on the outside", TradeUnit.Millimeter),
            new Symbol("delta", "hand wander", TradeUnit.Millimeter),
        ]);

    internal static Formula TurnRatio { get; } = new(
        "bend-spiral.ratio", Ratio, "p_out / (2 * pi * (R + r))", @"\frac{p_\mathrm{out}}{2\pi(R+r)}", Path, [OnOutside, Radius, Tube]);

    internal static Formula MeanSpeed { get; } = new(
        "bend-spiral.mean-speed", new Symbol("v_m", "Mean way for each radian of tube angle", TradeUnit.Millimeter),
        "S / N", @"\frac{S}{N}", Path,
        [
            new Symbol("S", "sum of sqrt(r^2 + c^2 (R + r cos t)^2) over the stations t; doubled in number until the mean stands still to 1e-13 of itself", TradeUnit.Millimeter),
            new Symbol("N", "number of stations evenly round the tube", TradeUnit.One),
        ]);

    internal static Formula Strip { get; } = new(
        "bend-spiral.strip", new Symbol("L", "Strip on the bend, one pass", TradeUnit.Millimeter),
        "2 * pi * n_t * v_m", @"2\pi\,n_\mathrm{t}\,v_\mathrm{m}", Path,
        [Turns, new Symbol("v_m", "mean way for each radian of tube angle", TradeUnit.Millimeter)]);

    internal static Formula SidewaysStrain { get; } = new(
        "bend-spiral.sideways-strain", Sideways,
        "w / 2 * c * sin(t * pi / 180) * (2 * r * r + pow(c * (R + r * cos(t * pi / 180)), 2)) / pow(r * r + pow(c * (R + r * cos(t * pi / 180)), 2), 1.5)",
        @"\frac{w}{2}\,\frac{c\,\sin t\,(2r^2 + c^2 f^2)}{(r^2 + c^2 f^2)^{3/2}},\quad f = R + r\cos t",
        Liouville, [Width, Ratio, Tubes, Tube, Radius]);

    internal static Formula OuterStrain { get; } = new(
        "bend-spiral.outer-strain", Gauss,
        "cos(w / 2 * sqrt(max(0, cos(t * pi / 180)) / (r * (R + r * cos(t * pi / 180))))) - 1",
        @"\cos\left(\frac{w}{2}\sqrt{\frac{\cos t}{r f}}\right) - 1", Jacobi, [Width, Tubes, Tube, Radius]);

    internal static Formula InnerStrain { get; } = new(
        "bend-spiral.inner-strain", Gauss,
        "(exp(w / 2 * sqrt(max(0, 0 - cos(t * pi / 180)) / (r * (R + r * cos(t * pi / 180))))) + exp(0 - w / 2 * sqrt(max(0, 0 - cos(t * pi / 180)) / (r * (R + r * cos(t * pi / 180)))))) / 2 - 1",
        @"\cosh\left(\frac{w}{2}\sqrt{\frac{-\cos t}{r f}}\right) - 1", Jacobi, [Width, Tubes, Tube, Radius]);

    internal static Formula MostPucker { get; } = new(
        "bend-spiral.pucker", new Symbol("e_pucker", "Most that an edge is too long: pucker", TradeUnit.One),
        "e_g - e_K", @"\varepsilon_\mathrm{g} - \varepsilon_K", Edge, [Sideways, Gauss]);

    internal static Formula MostStretch { get; } = new(
        "bend-spiral.stretch", new Symbol("e_stretch", "Most that an edge is too short: stretch", TradeUnit.One),
        "e_g + e_K", @"\varepsilon_\mathrm{g} + \varepsilon_K", Edge, [Sideways, Gauss]);
}
