namespace SacrificialTape.CutPlans.Tests;

/// <summary>Whole pieces few enough to try every plan, drawn from a seed so that each is the same every time.</summary>
internal sealed record SmallCase(int Seed, long RollUm, CutPiece[] Pieces)
{
    internal static SmallCase Of(int seed)
    {
        var draw = new Random(seed);
        long roll = draw.Next(20, 400);
        return new(seed, roll, [.. Enumerable.Range(0, draw.Next(1, 6)).Select(_ => new CutPiece(
            Length.FromMicrometers(Math.Max(1, roll * draw.Next(8, 60) / 100)), draw.Next(1, 4)))]);
    }

    internal Length Roll => Length.FromMicrometers(this.RollUm);

    internal int Fewest => SacrificialTape.Tests.TakeOff.EveryPlan.FewestRolls(
        this.RollUm, this.Pieces.SelectMany(static piece => Enumerable.Repeat((long)piece.Length.Micrometers, (int)piece.Count)));

    /// <summary>The worst plan that wastes no cut: a roll for each piece.</summary>
    internal CutPlan RollForEach => CutPlan.FromPatterns(
        this.Pieces, this.Roll, Length.FromMicrometers(1), this.Pieces.Select(piece => new CutPattern(this.Roll, [new CutPiece(piece.Length, 1)], piece.Count)));
}
