using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/limits.md quotes.</summary>
public static class LimitsPage
{
    public static void Hazards()
    {
        #region hazards
        var stock = new StripStock(
            new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMillimeters(0.03))),
            Length.FromMillimeters(100), Length.FromMeters(30));
        var found = new LineHazards(
            [SiteHazard.SweatingLine, SiteHazard.HotWorkPlanned],
            acidity: Acidity.FromPh(5.8),
            tensileStrength: Pressure.FromMegapascals(520));
        var line = new SurveyLine(
            "CW-7",
            new RingLay(new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12)), stock, Length.FromMillimeters(20)),
            ZincExposure.FromCategory(CorrosivityCategory.C3),
            Lifetime.Of(Duration.FromYears365(10)),
            new SteelCondition(hazards: found),
            ends: [new TapeEnd(Length.FromMillimeters(5), Length.FromMillimeters(50))]);
        LineEstimate estimate = new Job("cold water", [line], TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05))).Estimate().Lines[0];
        foreach (Finding finding in estimate.Findings)
        {
            Console.WriteLine($"{finding.Severity} {finding.Rule.Id}");
        }

        Console.WriteLine($"life {estimate.Life}; holds: {estimate.LifeHolds}");
        Console.WriteLine(estimate.CrewSteps[0].Text);
        #endregion
    }

    public static void Duplex()
    {
        #region duplex
        var zinc = new LifeEstimate(
            new Foil(Length.FromMicrometers(100)), 1, ZincExposure.FromCategory(CorrosivityCategory.C3), Utilisation.FromFraction(0.8), [LinearLoss.Law]);
        var paint = new PaintFilm(Lifetime.Of(Duration.FromYears365(10)), Lifetime.Of(Duration.FromYears365(15)));
        var duplex = new DuplexLife(zinc.Earliest, zinc.Latest, paint);
        Console.WriteLine($"zinc {zinc}; paint {paint}");
        foreach (DuplexRange range in duplex.ByFactor)
        {
            Console.WriteLine(range);
        }

        foreach (Finding finding in duplex.Judge(RuleSet.Default, "CW-7"))
        {
            Console.WriteLine($"{finding.Severity}: {finding.Rule.Title}");
        }
        #endregion
    }
}
