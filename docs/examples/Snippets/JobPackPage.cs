using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Reports;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/job-pack.md quotes.</summary>
public static class JobPackPage
{
    private static readonly StripStock Stock = new(
        new Tape(new Foil(Length.FromMicrometers(100), Length.FromMicrometers(5)), new Adhesive(Length.FromMicrometers(25))), Length.FromMillimeters(100), Length.FromMeters(50));

    private static readonly SpiralLay Lay = new(
        new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12)), Stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(15)));

    private static readonly JobEstimate Estimate = new Job(
        "Jetty, an invented job",
        [new SurveyLine("J-1", Lay, ZincExposure.FromCategory(CorrosivityCategory.C4), Lifetime.Of(Duration.FromYears365(15)))],
        new TakeOffChoices(Length.FromMillimeters(50), Length.FromMeters(1), Contingency.FromFraction(0.05))).Estimate();

    public static void Pack()
    {
        JobEstimate estimate = Estimate;
        #region pack
        var pack = new JobPack(estimate, new JobPackOptions { Day = new DateOnly(2026, 5, 14), Units = ReportUnits.UsCustomary });
        string html = pack.ToHtml();
        string markdown = pack.ToMarkdown();
        Console.WriteLine(html.StartsWith("<!DOCTYPE html>", StringComparison.Ordinal));
        Console.WriteLine(markdown[..markdown.IndexOf("Rules:", StringComparison.Ordinal)].TrimEnd());
        #endregion
    }

    public static void Draw()
    {
        SpiralLay lay = Lay;
        #region draw
        Picture picture = Picture.OfLay(lay);
        Console.WriteLine(picture.Title);
        Console.WriteLine(picture.Description);
        Console.WriteLine(picture.Svg[..picture.Svg.IndexOf(" width", StringComparison.Ordinal)]);
        #endregion
    }
}
