using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>
/// In which unit a number is written where its author gave none: the one a reader of drawings expects, but only where
/// the number comes back from it to the last bit. Otherwise the canonical unit.
/// </summary>
internal static class MeasureDefaults
{
    // From here on lengths read better in metres; below the other they are foils and films.
    private const double LongMm = 10_000;
    private const double ThinMm = 0.5;
    private const double SmallM2 = 0.1;

    internal static Measure Of(double number, TradeUnit canonical) => canonical switch
    {
        TradeUnit.Millimeter when Math.Abs(number) >= LongMm => Exactly(number, canonical, TradeUnit.Meter),
        TradeUnit.Millimeter when number != 0 && Math.Abs(number) < ThinMm => Exactly(number, canonical, TradeUnit.Micrometer),
        TradeUnit.SquareMeter when number != 0 && Math.Abs(number) < SmallM2 => Exactly(number, canonical, TradeUnit.SquareCentimeter),
        _ => new Measure(number, canonical),
    };

    /// <summary>Whether a measure is that very number in the canonical unit.</summary>
    internal static bool Means(Measure measure, double number, TradeUnit canonical) =>
        measure.Key.Unit == TradeUnits.Scale(canonical).Canonical && measure.In(canonical).Equals(number);

    private static Measure Exactly(double number, TradeUnit canonical, TradeUnit wanted)
    {
        var measure = new Measure(number, canonical);
        var nicer = new Measure(measure.In(wanted), wanted);
        if (Means(nicer, number, canonical))
        {
            return nicer;
        }

        // A division may end one digit off what a person would write: 0.07 mm is 70 um.
        double cut = StoredNumber.Key(nicer.Number);
        var rounded = new Measure(cut, wanted);
        return Means(rounded, number, canonical) ? rounded : measure;
    }
}
