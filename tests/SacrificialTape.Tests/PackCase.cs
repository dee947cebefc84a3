namespace SacrificialTape.Tests;

/// <summary>Whole pieces and the roll they are cut from, in whole micrometres: few enough to try every plan.</summary>
public sealed record PackCase(long RollUm, IReadOnlyList<(long LengthUm, int Count)> Pieces)
{
    internal IEnumerable<CutPiece> Asked => this.Pieces.Select(static piece => new CutPiece(piece.LengthUm, piece.Count));

    internal IEnumerable<long> Single => this.Pieces.SelectMany(static piece => Enumerable.Repeat(piece.LengthUm, piece.Count));

    internal CutPlan Plan(long times = 1) => CutPlan.Of(
        this.Pieces.Select(piece => new CutPiece(piece.LengthUm * times, piece.Count)), Length.FromMicrometers(this.RollUm * times), Make.Mm(1));
}
