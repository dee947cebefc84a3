using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;

namespace SacrificialTape.Jobs;

/// <summary>Takes one line through the rooms: contact, life, findings; its strips it has already.</summary>
internal static class LineEstimator
{
    internal static LineEstimate Estimate(SurveyLine line, RuleSet rules, LifeEstimates lives)
    {
        LifeEstimate life = lives.Of(line.Lay, line.Exposure);

        return new LineEstimate(line, life, rules);
    }

    /// <summary>The findings of a line, in the order of the rooms: steel, tape, lay, contact, life.</summary>
    internal static IEnumerable<Finding> Judge(SurveyLine line, LifeEstimate life, RuleSet rules)
    {
        IEnumerable<Finding> lay = line.Lay.Judge(rules, line.Tag);
        if (line.Lay.LayersEverywhere < line.LayersWanted)
        {
            lay = lay.Append(rules[RuleIds.LayersAsked].State(
                line.Tag, new Measure(line.Lay.LayersEverywhere, TradeUnit.One), new Measure(line.LayersWanted, TradeUnit.One)));
        }

        return
        [
            .. SteelFindings(line, rules),
            .. StockFindings(line, rules),
            .. lay,
            .. line.Contact?.Judge(rules, line.Tag) ?? [],
            .. life.Judge(rules, line.RequiredLife, line.Tag),
        ];
    }

    private static IEnumerable<Finding> SteelFindings(SurveyLine line, RuleSet rules)
    {
        string? metal = line.Steel.Metal switch
        {
            SubstrateMetal.Magnesium => RuleIds.Magnesium,
            SubstrateMetal.StainlessSteel => RuleIds.StainlessSteel,
            SubstrateMetal.HighStrengthSteel => RuleIds.HighStrengthSteel,
            _ => null,
        };
        if (metal is not null)
        {
            yield return rules[metal].State(line.Tag);
        }

        if (line.Steel.ServiceTemperature is not { } temperature)
        {
            yield break;
        }

        Measure measured = Measure.Of(temperature);
        if (rules[RuleIds.AdhesiveServiceTemperature].Judge(measured, line.Tag) is { } adhesive)
        {
            yield return adhesive;
        }

        if (line.Steel.WetInService)
        {
            // The stop says all that the warning says.
            Finding? wet = rules[RuleIds.WetTemperatureStop].Judge(measured, line.Tag)
                ?? rules[RuleIds.WetTemperatureWarning].Judge(measured, line.Tag);
            if (wet is not null)
            {
                yield return wet;
            }
        }
    }

    private static IEnumerable<Finding> StockFindings(SurveyLine line, RuleSet rules)
    {
        StripStock stock = line.Lay.Stock;
        Measure foil = Measure.Of(stock.Tape.Foil.Thickness);
        Measure width = Measure.Of(stock.Width);
        Finding?[] judged =
        [
            rules[RuleIds.MinimumFoilThickness].Judge(foil, line.Tag),
            rules[RuleIds.MaximumFoilThickness].Judge(foil, line.Tag),
            rules[RuleIds.MinimumStripWidth].Judge(width, line.Tag),
            rules[RuleIds.MaximumStripWidth].Judge(width, line.Tag),
            stock.Tape.ConductsAtLaps ? null : rules[RuleIds.FacingFilm].State(line.Tag),
        ];
        return judged.OfType<Finding>();
    }
}
