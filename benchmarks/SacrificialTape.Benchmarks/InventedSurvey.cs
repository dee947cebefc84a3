using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>An invented survey of any length: sizes, lengths, lays and exposures in turn, the same for the same number.</summary>
internal static class InventedSurvey
{
    private static readonly string[] Sizes = ["2", "3", "4", "6", "8", "10", "12", "16"];

    internal static Job Of(int lines)
    {
        StripStock[] stocks = [Stock(100, 100), Stock(100, 150), Stock(200, 100)];
        ZincExposure[] exposures =
        [
            ZincExposure.FromCategory(CorrosivityCategory.C3),
            ZincExposure.FromCategory(CorrosivityCategory.C4),
            ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(1.6), "invented"),
        ];
        Lifetime required = Lifetime.Of(Duration.FromYears365(20));
        var survey = new SurveyLine[lines];
        for (int i = 0; i < lines; i++)
        {
            // A fixed pattern: every line differs from its neighbours, and no clock or random seed enters.
            PipeSize size = PipeSize.FromNps(Sizes[i % Sizes.Length]);
            var pipe = new StraightPipe(size, Length.FromMeters(3 + (i * 7 % 91)));
            StripStock stock = stocks[i % stocks.Length];
            ILay lay = (i % 5) switch
            {
                0 => new RingLay(pipe, stock, Length.FromMillimeters(15)),
                1 => new SpiralLay(pipe, stock, SpiralSetting.FromMarks(Length.FromMillimeters(20)), SpiralEnds.LevelTurns()),
                2 => new AlongPipeLay(pipe, stock, Length.FromMillimeters(15)),
                3 => new SpiralLay(pipe, stock, SpiralSetting.FromLapAlongPipe(Length.FromMillimeters(15))),
                _ => new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(15))),
            };
            survey[i] = new SurveyLine(
                $"L-{i}",
                lay,
                exposures[i % exposures.Length],
                required,
                welds: new WeldWork([new GirthWelds(pipe.OutsideDiameter, 1 + (i % 4))], stock, Length.FromMillimeters(20)));
        }

        return new Job("invented", survey, TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05)));
    }

    private static StripStock Stock(double foilUm, double widthMm) => new(
        new Tape(new Foil(Length.FromMicrometers(foilUm)), new Adhesive(Length.FromMicrometers(25))),
        Length.FromMillimeters(widthMm),
        Length.FromMeters(50));
}
