using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;

namespace PlantSurvey;

/// <summary>How lives with their uncertainty are read: columns of choices.csv that may be left out.</summary>
internal sealed record LifeChoices(DateOnly? Laid, Probability Below, bool ByPowerLaw, UncertainUtilisation Usable, Probability Confidence)
{
    internal static readonly string[] Columns = ["laid", "below_bounds", "growth", "usable_low", "usable_high", "plan_confidence"];

    private static readonly Dictionary<string, bool> Growths = new() { ["linear"] = false, ["power"] = true };

    internal static LifeChoices? Read(CsvRow row)
    {
        DateOnly? laid = row.TextOr("laid", string.Empty).Length > 0 ? row.Day("laid") : null;
        double below = Inside(row, "below_bounds", 0.05, 0, 0.5);
        bool power = row.Choice("growth", Growths, "linear");
        double likeliest = RuleSet.Default[RuleIds.UsableFraction].Limit!.Value.Number;
        double low = row.NumberOr("usable_low", 0.6);
        double high = row.NumberOr("usable_high", 0.95);
        double confidence = Inside(row, "plan_confidence", 0.9, 0.000001, 0.999999);
        if (row.Faulty)
        {
            return null;
        }

        UncertainUtilisation? usable = row.Try(
            "usable_low",
            () => UncertainUtilisation.Triangular(Utilisation.FromFraction(low), Utilisation.FromFraction(likeliest), Utilisation.FromFraction(high)),
            ("highest", "usable_high"));
        return usable is null ? null : new LifeChoices(laid, Probability.FromFraction(below), power, usable, Probability.FromFraction(confidence));
    }

    private static double Inside(CsvRow row, string column, double otherwise, double above, double below)
    {
        double number = row.NumberOr(column, otherwise);
        if (!(number > above && number < below))
        {
            row.Fault(column, FormattableString.Invariant($"{number} is not more than {above} and less than {below}."));
        }

        return number;
    }
}
