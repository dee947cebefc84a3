using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Jobs;

/// <summary>Takes one line through the rooms: contact, life, findings; its strips it has already.</summary>
internal static class LineEstimator
{
    internal static LineEstimate Estimate(SurveyLine line, LineRules rules, LifeEstimates lives)
    {
        LifeEstimate life = lives.Of(line);

        return new LineEstimate(line, life, rules);
    }

    /// <summary>The findings of a line, in the order of the rooms: steel, hazards, tape, lay, what stays clear, contact, life, bare steel beside, paint over it; then those by rules of the host's own.</summary>
    internal static IEnumerable<Finding> Judge(SurveyLine line, LifeEstimate life, LineRules judgedBy)
    {
        RuleSet rules = judgedBy.Set;
        IEnumerable<Finding> lay = line.Lay.Judge(rules, line.Tag);
        if (line.Lay.LayersEverywhere < line.LayersWanted)
        {
            lay = lay.Append(rules[RuleIds.LayersAsked].State(
                line.Tag, new Measure(line.Lay.LayersEverywhere, TradeUnit.One), new Measure(line.LayersWanted, TradeUnit.One)));
        }

        return
        [
            .. SteelFindings(line, rules),
            .. HazardRules.Judge(line.Steel.Hazards, rules, line.Tag),
            .. StockRules.Judge(line.Lay.Stock, rules, line.Tag),
            .. FoilLimits.Judge(line.Lay, rules, line.Tag),
            .. WeldFindings(line, rules),
            .. lay,
            .. ClearFindings(line, rules),
            .. line.Contact?.Judge(rules, line.Tag) ?? [],
            .. line.ProvenContact?.Judge(rules, line.Tag) ?? [],
            .. life.Judge(line.RequiredLife, rules, line.Tag),
            .. BesideAndOver(line, life, rules),
            .. judgedBy.JudgeOwn(line, life),
        ];
    }

    private static IEnumerable<Finding> SteelFindings(SurveyLine line, RuleSet rules)
    {
        string? metal = line.Steel.Metal switch
        {
            SubstrateMetal.Magnesium => RuleIds.Magnesium,
            SubstrateMetal.StainlessSteel => RuleIds.StainlessSteel,
            SubstrateMetal.Aluminium => RuleIds.Aluminium,
            SubstrateMetal.HighStrengthSteel => RuleIds.HighStrengthSteel,
            _ => null,
        };
        if (metal is not null)
        {
            yield return rules[metal].State(line.Tag);
        }

        if (line.Steel.ServiceTemperature is not { } temperature)
        {
            if (line.Steel.WetInService)
            {
                yield return rules[RuleIds.WetTemperatureUnknown].State(line.Tag);
            }

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

    private static IEnumerable<Finding> ClearFindings(SurveyLine line, RuleSet rules)
    {
        ValueList<StayClear> clear = line.AllStayClear;
        return clear.Count == 0
            ? []
            : clear.SelectMany(one => one.Judge(rules, line.Tag)).Append(rules[RuleIds.SteelLeftClear].State(line.Tag));
    }

    private static IEnumerable<Finding> BesideAndOver(SurveyLine line, LifeEstimate life, RuleSet rules)
    {
        foreach (Finding finding in line.Ends.SelectMany(end => end.Judge(rules, line.Tag + " (tape end)")))
        {
            yield return finding;
        }

        if (line.SteelStaysBareBeside)
        {
            yield return rules[RuleIds.LifeWithoutBareSteel].State(line.Tag);
        }

        if (line.PaintOver is { } paint)
        {
            foreach (Finding finding in new DuplexLife(life.Earliest, life.Latest, paint).Judge(rules, line.Tag))
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> WeldFindings(SurveyLine line, RuleSet rules)
    {
        if (line.Welds is not { } welds)
        {
            yield break;
        }

        // The same stock is judged once, with the lay.
        if (!welds.Stock.Equals(line.Lay.Stock))
        {
            foreach (Finding finding in StockRules.Judge(welds.Stock, rules, line.Tag + " (weld strip)"))
            {
                yield return finding;
            }
        }

        if (!welds.Stock.Tape.ConductsAtLaps)
        {
            yield return rules[RuleIds.FacingFilmUnderLay].State(line.Tag);
        }

        foreach (FilletWelds fillet in welds.Seams.OfType<FilletWelds>())
        {
            foreach (Finding finding in WeldStrips.Judge(welds.Stock, fillet.Face, rules, line.Tag + " (weld strip)"))
            {
                yield return finding;
            }
        }

        if (welds.Seams.Any(static seam => seam.Closed)
            && rules[RuleIds.MinimumEndLap].Judge(Measure.Of(welds.EndLap), line.Tag + " (weld strip)") is { } endLap)
        {
            yield return endLap;
        }
    }
}
