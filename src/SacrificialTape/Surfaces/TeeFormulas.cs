using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of tees as the workings show them.</summary>
internal static class TeeFormulas
{
    private static readonly Basis Saddle = Basis.FirstPrinciples(
        "two cylinders whose axes cross at a right angle; heights and areas integrated round the branch");

    internal static Formula Modulus { get; } = new(
        "tee.modulus",
        new Symbol("k", "Branch over run", TradeUnit.One),
        "d / D",
        @"\frac{d}{D}",
        Saddle,
        [
            new Symbol("d", "diameter of the branch", TradeUnit.Millimeter),
            new Symbol("D", "diameter of the run", TradeUnit.Millimeter),
        ]);

    internal static Formula RunArea { get; } = new(
        "tee.run-area",
        new Symbol("A_run", "Run without the branch", TradeUnit.SquareMeter),
        "2 * pi * D * C / 1e6",
        @"\frac{2\pi\,D\,C}{10^{6}}",
        Saddle,
        [
            new Symbol("D", "diameter of the run", TradeUnit.Millimeter),
            new Symbol("C", "centre to end of the run", TradeUnit.Millimeter),
        ]);

    internal static Formula HoleArea { get; } = new(
        "tee.hole-area",
        new Symbol("A_hole", "Hole that the branch cuts into it", TradeUnit.SquareMeter),
        "d * d * B_k / 1e6",
        @"\frac{d^2\,B(k)}{10^{6}}",
        Saddle,
        [
            new Symbol("d", "diameter of the branch", TradeUnit.Millimeter),
            new Symbol("B_k", "complete elliptic integral B(k) of cos^2 t / sqrt(1 - k^2 sin^2 t), t from 0 to 90 deg: pi / 4 for k = 0, 1 for k = 1", TradeUnit.One),
        ]);

    internal static Formula BranchArea { get; } = new(
        "tee.branch-area",
        new Symbol("A_branch", "Branch from the saddle to its end", TradeUnit.SquareMeter),
        "(pi * d * M - d * D * E_k) / 1e6",
        @"\frac{\pi\,d\,M - d\,D\,E(k)}{10^{6}}",
        Saddle,
        [
            new Symbol("d", "diameter of the branch", TradeUnit.Millimeter),
            new Symbol("M", "centre to end of the branch", TradeUnit.Millimeter),
            new Symbol("D", "diameter of the run", TradeUnit.Millimeter),
            new Symbol("E_k", "complete elliptic integral E(k) of sqrt(1 - k^2 sin^2 t), t from 0 to 90 deg: pi / 2 for k = 0, 1 for k = 1", TradeUnit.One),
        ]);

    internal static Formula Area { get; } = new(
        "tee.area",
        new Symbol("A", "Area of the tee", TradeUnit.SquareMeter),
        "A_run - A_hole + A_branch",
        @"A_\mathrm{run} - A_\mathrm{hole} + A_\mathrm{branch}",
        Saddle,
        [
            new Symbol("A_run", "run without the branch", TradeUnit.SquareMeter),
            new Symbol("A_hole", "hole that the branch cuts into it", TradeUnit.SquareMeter),
            new Symbol("A_branch", "branch from the saddle to its end", TradeUnit.SquareMeter),
        ]);

    internal static Formula ShortSide { get; } = new(
        "tee.short-side",
        new Symbol("m_short", "Branch on the ridge of the run", TradeUnit.Millimeter),
        "M - D / 2",
        @"M - \frac{D}{2}",
        Saddle,
        [
            new Symbol("M", "centre to end of the branch", TradeUnit.Millimeter),
            new Symbol("D", "diameter of the run", TradeUnit.Millimeter),
        ]);

    internal static Formula LongSide { get; } = new(
        "tee.long-side",
        new Symbol("m_long", "Branch on the flank of the run", TradeUnit.Millimeter),
        "M - sqrt(D * D - d * d) / 2",
        @"M - \frac{\sqrt{D^2 - d^2}}{2}",
        Saddle,
        [
            new Symbol("M", "centre to end of the branch", TradeUnit.Millimeter),
            new Symbol("D", "diameter of the run", TradeUnit.Millimeter),
            new Symbol("d", "diameter of the branch", TradeUnit.Millimeter),
        ]);
}
