using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>The cheapest tape and lay for one line, the runners-up, and why the rest were rejected.</summary>
internal static class ChoiceReport
{
    private const int Shown = 6;

    internal static int Write(Survey survey, string tag, TextWriter output, TextWriter errors)
    {
        SurveyLine? line = survey.Job.Lines.FirstOrDefault(one => one.Tag == tag);
        if (line is null || survey.Prices is null)
        {
            errors.WriteLine(line is null ? $"There is no line '{tag}' in the survey." : "A choice needs prices.csv and norms.csv.");
            return 2;
        }

        ValueList<ILayMaker> makers = Makers(line.Lay.Surface);
        if (makers.Count == 0)
        {
            errors.WriteLine($"Of {line.Lay.Surface.Description} there is one lay only; nothing is to choose.");
            return 2;
        }

        TapeChoice choice;
        try
        {
            choice = TapeChoice.Among(
                line.Needs,
                new ChoiceOptions(
                    new ValueList<StripStock>(survey.Stock),
                    [Length.FromMillimeters(10), Length.FromMillimeters(12), Length.FromMillimeters(15), Length.FromMillimeters(20)],
                    [1, 2],
                    makers,
                    OfOneLine(survey.Prices),
                    survey.Job.TakeOff,
                    new LayChoices(survey.Choices.EndLap, survey.Choices.HandWander),
                    RollCounting.ByShare));
        }
        catch (ArgumentException refused)
        {
            errors.WriteLine(CsvRow.FirstLine(refused));
            return 1;
        }

        output.WriteLine($"{choice}. Rolls by share; without access and what else is paid once for the whole job.");
        foreach (AcceptedLay lay in choice.Accepted.Take(Shown))
        {
            output.WriteLine($"  {lay}");
        }

        output.WriteLine("Rejected, by the first reason:");
        foreach (IGrouping<string, RejectedLay> same in choice.Rejected.GroupBy(Reason).OrderByDescending(static same => same.Count()))
        {
            output.WriteLine($"  {same.Count()} x {same.Key}; for instance {same.First()}");
        }

        return 0;
    }

    private static CostPrices OfOneLine(CostPrices prices) =>
        new(prices.Rolls, prices.Labour, prices.Norms, consumables: prices.Consumables, waste: prices.Waste);

    private static string Reason(RejectedLay rejected) => rejected.Findings.Count > 0 ? rejected.Findings[0].Rule.Title : "the lay cannot be made";

    private static ValueList<ILayMaker> Makers(Surface surface) => surface switch
    {
        StraightPipe pipe => [LayMaker.Spiral(pipe), LayMaker.Rings(pipe), LayMaker.AlongPipe(pipe)],
        Bend bend => [LayMaker.BendRings(bend)],
        Head or ConcentricReducer or TaperedColumn => new(LayWords.Round.Select(ILayMaker (word) => Of(word.Key, word.Value, surface, surface is Head and not Cap ? "vessel" : "fitting"))),
        Shell => new(LayWords.Shell.Select(ILayMaker (word) => Of(word.Key, word.Value, surface, "vessel"))),
        Panel => new(LayWords.Panel.Where(static word => word.Key != "better").Select(ILayMaker (word) => Of(word.Key, word.Value, surface, "panel"))),
        _ => [],
    };

    private static LayMaker Of(string name, LayBy lay, Surface surface, string work) => new(
        name,
        surface,
        new LabourKind(surface is Shell ? name == "rings" ? StripPurpose.Ring : StripPurpose.AlongPipe : StripPurpose.Other, ApplicationMethod.ByHand, work),
        (strip, lap, options) => lay(surface, strip, lap, options));
}
