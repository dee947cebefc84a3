using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Contact;

/// <summary>The formulas of windows at their places as the workings show them.</summary>
internal static class ContactFormulas
{
    private static readonly Basis Torus = Basis.FirstPrinciples("circles about the centre of a bend are in proportion to their radius");

    private static readonly Symbol Radius = new("R", "bend radius", TradeUnit.Millimeter);
    private static readonly Symbol Tube = new("r", "tube radius", TradeUnit.Millimeter);

    internal static Formula BendFactor { get; } = new(
        "contact.bend-factor",
        new Symbol("g", "Length on the steel of a unit along the outside", TradeUnit.One),
        "(R + r * cos(psi * pi / 180)) / (R + r)",
        @"\frac{R + r\cos\psi}{R + r}",
        Torus,
        [Radius, Tube, new Symbol("psi", "angle around from the outside", TradeUnit.Degree)]);

    internal static Formula BendCovered { get; } = new(
        "contact.bend-covered",
        new Symbol("G_m", "Area for each unit along the outside", TradeUnit.Millimeter),
        "(R * (b - a) + r * r * (sin(b / r) - sin(a / r))) / (R + r)",
        @"\frac{R\,(b-a) + r^2\left(\sin\frac{b}{r} - \sin\frac{a}{r}\right)}{R + r}",
        Torus,
        [Radius, Tube, new Symbol("b", "to, around", TradeUnit.Millimeter), new Symbol("a", "from, around", TradeUnit.Millimeter)]);

    internal static Formula RectangularWindow { get; } = new(
        "contact.rectangular-window",
        new Symbol("A_w", "Bare area of a window", TradeUnit.SquareCentimeter),
        "l * b / 100",
        @"l\,b",
        Basis.FirstPrinciples("area of a rectangle"),
        [new Symbol("l", "along", TradeUnit.Millimeter), new Symbol("b", "around", TradeUnit.Millimeter)]);

    internal static Formula RoundWindow { get; } = new(
        "contact.round-window",
        new Symbol("A_w", "Bare area of a window", TradeUnit.SquareCentimeter),
        "pi / 4 * d * d / 100",
        @"\frac{\pi}{4}\,d^2",
        Basis.FirstPrinciples("area of a disc"),
        [new Symbol("d", "diameter", TradeUnit.Millimeter)]);

    internal static Formula RatioInMetre { get; } = new(
        "contact.ratio-in-metre",
        new Symbol("q_1", "Bare steel in the worst square metre", TradeUnit.SquareCentimeterPerSquareMeter),
        "min(1, A_b / A_1) * 10000",
        @"\frac{10^{4}\,A_b}{A_1}",
        Basis.FirstPrinciples("bare area over covered area, least over all places of the square metre"),
        [new Symbol("A_b", "bare steel in it", TradeUnit.SquareMeter), new Symbol("A_1", "area of it", TradeUnit.SquareMeter)]);

    internal static Formula Distance { get; } = new(
        "contact.distance",
        new Symbol("d_w", "Distance to the nearest window", TradeUnit.Millimeter),
        "sqrt(g * dx * g * dx + dy * dy)",
        @"\sqrt{(g\,\Delta x)^2 + \Delta y^2}",
        Basis.FirstPrinciples("a way on the unrolled surface; on a bend g is the root of the mean square of the factor along it"),
        [
            new Symbol("g", "factor along", TradeUnit.One),
            new Symbol("dx", "distance along", TradeUnit.Millimeter),
            new Symbol("dy", "distance around", TradeUnit.Millimeter),
        ]);

    internal static Formula Untouched { get; } = new(
        "contact.strips-untouched",
        new Symbol("n_u", "Strips without bare steel", TradeUnit.One),
        "n_s - n_t",
        "n_s - n_t",
        Basis.FirstPrinciples("strips that reach no window through laps that conduct"),
        [new Symbol("n_s", "strips", TradeUnit.One), new Symbol("n_t", "strips that touch bare steel", TradeUnit.One)]);

    internal static Formula Turned { get; } = new(
        "contact.turned",
        new Symbol("alpha", "Angle from the named line", TradeUnit.Degree),
        "y / C * 360",
        @"\frac{y}{C}\cdot 360",
        Basis.FirstPrinciples("a circle in proportion"),
        [new Symbol("y", "place around", TradeUnit.Millimeter), new Symbol("C", "girth", TradeUnit.Millimeter)]);
}
