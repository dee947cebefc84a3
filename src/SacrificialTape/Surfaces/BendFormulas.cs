using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of bends as the workings show them.</summary>
internal static class BendFormulas
{
    private static readonly Basis Pappus = Basis.FirstPrinciples(
        "Pappus: the circumference of the tube times the way of its centre; the outside gains what the inside loses");

    private static readonly Symbol Diameter = new("D", "outside diameter of the pipe", TradeUnit.Millimeter);
    private static readonly Symbol Radius = new("R", "bend radius, to the centre line", TradeUnit.Millimeter);
    private static readonly Symbol Angle = new("phi", "angle of the bend", TradeUnit.Degree);

    private static readonly Symbol Turn = new("alpha", "turn at one joint", TradeUnit.Degree);

    private static readonly Basis Pieces = Basis.FirstPrinciples(
        "the planes of the joints pass through the centre of the bend and stand half a turn off square on both sides of a piece");

    internal static Formula Area { get; } = new(
        "bend.area",
        new Symbol("A", "Area of the bend", TradeUnit.SquareMeter),
        "pi * D * R * (phi * pi / 180) / 1e6",
        @"\frac{\pi\,D\,R\,\varphi}{10^{6}}",
        Pappus,
        [Diameter, Radius, Angle]);

    internal static Formula OutsideArc { get; } = new(
        "bend.outside-arc",
        new Symbol("W", "Arc along the outside of the bend", TradeUnit.Millimeter),
        "(R + D / 2) * (phi * pi / 180)",
        @"\left(R + \frac{D}{2}\right)\varphi",
        Basis.FirstPrinciples("arc of a circle"),
        [Radius, Diameter, Angle]);

    internal static Formula InsideArc { get; } = new(
        "bend.inside-arc",
        new Symbol("W_in", "Arc along the inside of the bend", TradeUnit.Millimeter),
        "(R - D / 2) * (phi * pi / 180)",
        @"\left(R - \frac{D}{2}\right)\varphi",
        Basis.FirstPrinciples("arc of a circle"),
        [Radius, Diameter, Angle]);

    internal static Formula MitredArea { get; } = new(
        "bend.mitred-area",
        new Symbol("A", "Area of the mitred bend", TradeUnit.SquareMeter),
        "pi * D * 2 * m * R * tan(phi * pi / 180 / (2 * m)) / 1e6",
        @"\frac{2\,\pi\,D\,m\,R\,\tan\frac{\varphi}{2m}}{10^{6}}",
        Basis.FirstPrinciples("a cylinder cut slantwise at both ends has the area of its circumference times the length of its axis; the axes are tangents of the bend's circle"),
        [Diameter, new Symbol("m", "mitre joints", TradeUnit.One), Radius, Angle]);

    internal static Formula JointTurn { get; } = new(
        "bend.joint-turn",
        new Symbol("alpha", "Turn at one joint", TradeUnit.Degree),
        "phi / m",
        @"\frac{\varphi}{m}",
        Basis.FirstPrinciples("every joint turns the same"),
        [Angle, new Symbol("m", "mitre joints", TradeUnit.One)]);

    internal static Formula PieceOutside { get; } = new(
        "bend.piece-outside",
        new Symbol("l_out", "Middle piece along the outside", TradeUnit.Millimeter),
        "(2 * R + D) * tan(alpha * pi / 360)",
        @"(2R + D)\tan\frac{\alpha}{2}",
        Pieces,
        [Radius, Diameter, Turn]);

    internal static Formula PieceInside { get; } = new(
        "bend.piece-inside",
        new Symbol("l_in", "Middle piece along the inside", TradeUnit.Millimeter),
        "(2 * R - D) * tan(alpha * pi / 360)",
        @"(2R - D)\tan\frac{\alpha}{2}",
        Pieces,
        [Radius, Diameter, Turn]);

    internal static Formula LongRadius { get; } = new(
        "bend.long-radius",
        new Symbol("R", "Bend radius, long", TradeUnit.Millimeter),
        "floor(1.5 * N * 25.4 + 0.5)",
        @"\left\lfloor 1.5\,N \cdot 25.4 + 0.5\right\rfloor",
        Basis.From(References.LongRadiusElbows, "read for NPS 4 to 24; the rule is carried beyond, check before use"),
        [new Symbol("N", "nominal pipe size in inches", TradeUnit.One)]);

    internal static Formula ShortRadius { get; } = new(
        "bend.short-radius",
        new Symbol("R", "Bend radius, short", TradeUnit.Millimeter),
        "floor(2 * N * 25.4 + 0.5) / 2",
        @"\tfrac{1}{2}\left\lfloor 2\,N \cdot 25.4 + 0.5\right\rfloor",
        Basis.From(References.ShortRadiusReturns, "read for some sizes of NPS 1 to 24; the rule is carried beyond, check before use"),
        [new Symbol("N", "nominal pipe size in inches", TradeUnit.One)]);
}
