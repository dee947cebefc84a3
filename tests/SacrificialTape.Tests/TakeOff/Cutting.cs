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
}
