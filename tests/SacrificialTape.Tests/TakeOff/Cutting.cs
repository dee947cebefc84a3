using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests;

/// <summary>Cases of cutting as the library takes them.</summary>
internal static class Cutting
{
    internal static StripTakeOff TakeOff(CutCase given) => StripTakeOff.Of(Strips(given), Choices(given));

    internal static IEnumerable<Strip> Strips(CutCase given)
    {
        StripStock stock = Stock(100, given.RollM);
        return given.Pieces.Select(piece => new Strip(
            stock, Length.FromMicrometers(piece.LengthUm), piece.Count, piece.Whole ? StripPurpose.Ring : StripPurpose.Spiral, !piece.Whole,
            Length.FromMicrometers(piece.CoverUm), Length.FromMicrometers(piece.TrimUm)));
    }

    internal static TakeOffChoices Choices(CutCase given) => Make.TakeOff(given.Contingency, given.SpliceMm, given.ShortestMm);

    /// <summary>The take-off by the plainest rule alone, whatever others may do better.</summary>
    internal static RollCutting ByFirstFit(CutCase given, PatternTally? tally = null)
    {
        Strip[] strips = [.. Strips(given)];
        long needed = strips.Sum(static strip => strip.LengthUm * strip.Count);
        var order = new CutOrder(
            (long)Math.Round(given.RollM * 1e6), Choices(given), new ValueList<Strip>(strips), (long)Math.Round(needed * given.Contingency));
        return order.Cut(FirstFit.Pack(order.WholePieces()), tally);
    }

    /// <summary>Every cut of a roll, whole pieces and runs alike, as one text.</summary>
    internal static string List(CutPattern pattern) => List(
        pattern.Pieces.Concat(pattern.Runs).SelectMany(static cut => Enumerable.Repeat(cut.LengthUm, (int)cut.Count)));

    internal static string List(IEnumerable<long> cutsUm) => string.Join(' ', cutsUm);
}
