using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of heads as the workings show them.</summary>
internal static class HeadFormulas
{
    private static readonly Basis Turned = Basis.FirstPrinciples("a profile turned round its axis: circle times piece of profile, integrated");

    private static readonly Basis Parallel = Basis.FirstPrinciples(
        "Steiner's formula for the surface at a fixed distance outside a convex one; the curvature of a half dish adds up to a half sphere's");

    private static readonly Symbol D = new("D", "diameter of the face that was measured", TradeUnit.Millimeter);
    private static readonly Symbol Depth = new("h", "depth of the face that was measured", TradeUnit.Millimeter);
    private static readonly Symbol Eccentricity = new("e_1", "Eccentricity of its profile", TradeUnit.One);
    private static readonly Symbol Outside = new("D_o", "outside diameter", TradeUnit.Millimeter);
    private static readonly Symbol Crown = new("L", "crown radius, outside", TradeUnit.Millimeter);
    private static readonly Symbol Knuckle = new("r", "knuckle radius, outside", TradeUnit.Millimeter);
    private static readonly Symbol KnuckleCircle = new("c", "Radius of the circle of knuckle centres", TradeUnit.Millimeter);
    private static readonly Symbol CrownAngle = new("phi", "Angle from the axis to where crown and knuckle meet", TradeUnit.Degree);
    private static readonly Symbol Thickness = new("t", "plate thickness", TradeUnit.Millimeter);
    private static readonly Symbol Measured = new("A_face", "Dish on the face that was measured", TradeUnit.SquareMeter);
    private static readonly Symbol Dish = new("A_dish", "Dish on the outside", TradeUnit.SquareMeter);
    private static readonly Symbol Curvature = new("Q", "Both curvatures, summed over the face", TradeUnit.Millimeter);

    internal static Formula FlatEccentricity { get; } = new(
        "head.eccentricity-flat", Eccentricity, "sqrt((D - 2 * h) * (D + 2 * h)) / D", @"\frac{\sqrt{(D-2h)(D+2h)}}{D}", Turned, [D, Depth]);

    internal static Formula DeepEccentricity { get; } = new(
        "head.eccentricity-deep", Eccentricity, "sqrt((2 * h - D) * (2 * h + D)) / (2 * h)", @"\frac{\sqrt{(2h-D)(2h+D)}}{2h}", Turned, [D, Depth]);

    internal static Formula FlatSpheroid { get; } = new(
        "head.spheroid-flat",
        Measured,
        "(pi * D * D / 4 + pi * h * h / e_1 * ln((1 + e_1) * D / (2 * h))) / 1e6",
        @"\frac{1}{10^{6}}\left[\frac{\pi D^2}{4} + \frac{\pi h^2}{e_1}\ln\frac{(1+e_1)D}{2h}\right]",
        Turned,
        [D, Depth, Eccentricity]);

    internal static Formula DeepSpheroid { get; } = new(
        "head.spheroid-deep",
        Measured,
        "(pi * D * D / 4 + pi * D * h / (2 * e_1) * atan(2 * h * e_1 / D)) / 1e6",
        @"\frac{1}{10^{6}}\left[\frac{\pi D^2}{4} + \frac{\pi D h}{2 e_1}\arctan\frac{2 h e_1}{D}\right]",
        Turned,
        [D, Depth, Eccentricity]);

    internal static Formula Hemisphere { get; } = new(
        "head.hemisphere", Measured, "pi * D * D / 2 / 1e6", @"\frac{\pi D^2}{2 \cdot 10^{6}}", Turned, [D]);

    internal static Formula FlatCurvature { get; } = new(
        "head.curvature-flat",
        Curvature,
        "2 * pi * (h + D / (2 * e_1) * atan(e_1 * D / (2 * h)))",
        @"2\pi\left[h + \frac{D}{2 e_1}\arctan\frac{e_1 D}{2h}\right]",
        Parallel,
        [D, Depth, Eccentricity]);

    internal static Formula DeepCurvature { get; } = new(
        "head.curvature-deep",
        Curvature,
        "2 * pi * (h + D * D / (4 * h * e_1) * ln((1 + e_1) * 2 * h / D))",
        @"2\pi\left[h + \frac{D^2}{4 h e_1}\ln\frac{2(1+e_1)h}{D}\right]",
        Parallel,
        [D, Depth, Eccentricity]);

    internal static Formula HemisphereCurvature { get; } = new(
        "head.curvature-hemisphere", Curvature, "2 * pi * D", @"2\pi D", Parallel, [D]);

    internal static Formula OutsideDish { get; } = new(
        "head.outside-dish",
        Dish,
        "A_face + (t * Q + 2 * pi * t * t) / 1e6",
        @"A_\mathrm{face} + \frac{t\,Q + 2\pi t^2}{10^{6}}",
        Parallel,
        [Measured, Thickness, Curvature]);

    internal static Formula MeasuredOutside { get; } = new(
        "head.measured-outside", Dish, "A_face", @"A_\mathrm{face}", Basis.FirstPrinciples("the outside is the face that was measured"), [Measured]);

    internal static Formula KnuckleCentres { get; } = new(
        "head.knuckle-centres", KnuckleCircle, "D_o / 2 - r", @"\frac{D_\mathrm{o}}{2} - r", Turned, [Outside, Knuckle]);

    internal static Formula CrownEdge { get; } = new(
        "head.crown-edge",
        CrownAngle,
        "atan(c / sqrt((L - D_o / 2) * (L + D_o / 2 - 2 * r))) * 180 / pi",
        @"\frac{180}{\pi}\arctan\frac{c}{\sqrt{(L - D_\mathrm{o}/2)(L + D_\mathrm{o}/2 - 2r)}} = \frac{180}{\pi}\arcsin\frac{c}{L - r}",
        Turned,
        [KnuckleCircle, Crown, Outside, Knuckle]);

    internal static Formula TorisphericalDepth { get; } = new(
        "head.torispherical-depth",
        new Symbol("h_o", "Depth, outside", TradeUnit.Millimeter),
        "r + 2 * (L - r) * pow(sin(phi * pi / 360), 2)",
        @"r + 2(L - r)\sin^2(\varphi/2) = L - (L - r)\cos\varphi",
        Turned,
        [Knuckle, Crown, CrownAngle]);

    internal static Formula CrownArea { get; } = new(
        "head.crown-area",
        new Symbol("A_crown", "Crown, a cap of a sphere", TradeUnit.SquareMeter),
        "4 * pi * L * L * pow(sin(phi * pi / 360), 2) / 1e6",
        @"\frac{4\pi L^2 \sin^2(\varphi/2)}{10^{6}}",
        Turned,
        [Crown, CrownAngle]);

    internal static Formula KnuckleArea { get; } = new(
        "head.knuckle-area",
        new Symbol("A_knuckle", "Knuckle, a zone of a torus", TradeUnit.SquareMeter),
        "2 * pi * r * (c * (90 - phi) * pi / 180 + r * cos(phi * pi / 180)) / 1e6",
        @"\frac{2\pi r\left[c\left(\frac{\pi}{2} - \varphi\right) + r\cos\varphi\right]}{10^{6}}",
        Turned,
        [Knuckle, KnuckleCircle, CrownAngle]);

    internal static Formula TorisphericalDish { get; } = new(
        "head.torispherical-dish",
        Dish,
        "A_crown + A_knuckle",
        @"A_\mathrm{crown} + A_\mathrm{knuckle}",
        Turned,
        [CrownArea.Result, KnuckleArea.Result]);

    internal static Formula Cone { get; } = new(
        "head.cone", Measured, "pi * D / 2 * sqrt(h * h + D * D / 4) / 1e6", @"\frac{\pi D}{2 \cdot 10^{6}}\sqrt{h^2 + \frac{D^2}{4}}", Turned, [D, Depth]);

    internal static Formula Disc { get; } = new(
        "head.disc", Measured, "pi * D * D / 4 / 1e6", @"\frac{\pi D^2}{4 \cdot 10^{6}}", Turned, [D]);

    internal static Formula StraightFlange { get; } = new(
        "head.straight-flange",
        new Symbol("A_flange", "Straight flange", TradeUnit.SquareMeter),
        "pi * D_o * h_1 / 1e6",
        @"\frac{\pi D_\mathrm{o} h_1}{10^{6}}",
        Turned,
        [Outside, new Symbol("h_1", "length of the straight flange", TradeUnit.Millimeter)]);

    internal static Formula Area { get; } = new(
        "head.area",
        new Symbol("A", "Area of the head", TradeUnit.SquareMeter),
        "A_dish + A_flange",
        @"A_\mathrm{dish} + A_\mathrm{flange}",
        Turned,
        [Dish, StraightFlange.Result]);
}
