using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Tapes;

/// <summary>The rules on a stocked strip: foil, width, film.</summary>
internal static class StockRules
{
    internal static IEnumerable<Finding> Judge(StripStock stock, RuleSet rules, string subject)
    {
        Measure foil = Measure.Of(stock.Tape.Foil.Thickness);
        Measure width = Measure.Of(stock.Width);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumFoilThickness].Judge(foil, subject),
            rules[RuleIds.MaximumFoilThickness].Judge(foil, subject),
            rules[RuleIds.MinimumStripWidth].Judge(width, subject),
            rules[RuleIds.MaximumStripWidth].Judge(width, subject),
            stock.Tape.ConductsAtLaps ? null : rules[RuleIds.FacingFilm].State(subject),
        ];
        return judged.OfType<Finding>();
    }
}
