using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of weld seams as the workings show them.</summary>
internal static class WeldFormulas
{
    private static readonly Symbol Seam = new("S", "Length of one seam", TradeUnit.Millimeter);
    private static readonly Symbol Diameter = new("D", "outside diameter of the pipe", TradeUnit.Millimeter);
    private static readonly Symbol Turn = new("alpha", "angle by which the line turns at the joint", TradeUnit.Degree);

    internal static Formula Saddle { get; } = new(
        "weld.saddle",
        Seam,
        "2 * d * I_k",
        @"2\,d\,I(k)",
        Basis.FirstPrinciples("arc length of the line in which two cylinders meet whose axes cross at a right angle"),
        [
            new Symbol("d", "diameter of the branch", TradeUnit.Millimeter),
            new Symbol("I_k", "integral of sqrt(1 + k^2 sin^2 t cos^2 t / (1 - k^2 sin^2 t)), t from 0 to 90 deg, k = d / D: pi / 2 for a thin branch, 1.91 for an equal one", TradeUnit.One),
        ]);

    internal static Formula Mitre { get; } = new(
        "weld.mitre",
        Seam,
        "2 * D * E_b / cos(alpha * pi / 360)",
        @"\frac{2\,D\,E(\sin\frac{\alpha}{2})}{\cos\frac{\alpha}{2}}",
        Basis.FirstPrinciples("a slanted cut through a cylinder is an ellipse with the half axes D / 2 and D / (2 cos(alpha / 2))"),
        [
            Diameter,
            new Symbol("E_b", "complete elliptic integral E(b) of sqrt(1 - b^2 sin^2 t), t from 0 to 90 deg, b = sin(alpha / 2): pi / 2 for a straight joint", TradeUnit.One),
            Turn,
        ]);

    internal static Formula Course { get; } = new(
        "weld.course",
        Seam,
        "h / c",
        @"\frac{h}{c}",
        Basis.FirstPrinciples("courses of equal height; staggered seams end at the next course"),
        [new Symbol("h", "length or height of the shell", TradeUnit.Millimeter), new Symbol("c", "courses", TradeUnit.One)]);

    internal static Formula FilletFace { get; } = new(
        "weld.fillet-face",
        new Symbol("f", "Width of the weld's face", TradeUnit.Millimeter),
        "z * sqrt(2)",
        @"z\sqrt{2}",
        Basis.FirstPrinciples("flat face of a fillet with two equal legs at a right angle"),
        [new Symbol("z", "leg of the fillet", TradeUnit.Millimeter)]);
}
