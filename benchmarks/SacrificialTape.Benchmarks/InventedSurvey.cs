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
                1 => new SpiralLay(pipe, stock, SpiralSetting.FromLapBetweenMarks(Length.FromMillimeters(20)), SpiralEnds.LevelTurns()),
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

    /// <summary>A survey of every shape: of twelve lines five are pipe, each of the others is another shape.</summary>
    internal static Job Mixed(int lines)
    {
        StripStock[] stocks = [Stock(100, 100), Stock(100, 50), Stock(200, 100), Stock(80, 25)];
        ZincExposure[] exposures = [ZincExposure.FromCategory(CorrosivityCategory.C3), ZincExposure.FromCategory(CorrosivityCategory.C4)];
        Lifetime required = Lifetime.Of(Duration.FromYears365(20));
        var survey = new SurveyLine[lines];
        for (int i = 0; i < lines; i++)
        {
            survey[i] = new SurveyLine($"L-{i}", MixedLay(i, stocks), exposures[i % exposures.Length], required);
        }

        return new Job("invented", survey, TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05)));
    }

    private static ILay MixedLay(int i, StripStock[] stocks)
    {
        PipeSize size = PipeSize.FromNps(Sizes[(i * 5) % Sizes.Length]);
        StripStock wide = stocks[2 * (i % 2)];
        StripStock narrow = stocks[1];
        Length lap = Mm(12);
        double step = i * 7 % 91; // no two lines alike for a while
        return (i % 12) switch
        {
            0 => new BendRingLay(new Bend(Mm(219.1), Mm(305 + step), Angle.FromDegrees(90)), narrow, lap),
            1 => new TeeLay(new Tee(Mm(219.1), Mm(168.3), Mm(178 + step), Mm(168 + step)), narrow, lap, lap),
            2 => new MeridianStripLay(new ConcentricReducer(Mm(323.8), Mm(219.1), Mm(203 + step)), narrow, lap),
            3 => new GoreLay(TorisphericalHead.Kloepper(Mm(1600 + step), Mm(10), Mm(40)), narrow, lap),
            4 => new ShellLay(new Shell(Mm(1600 + step), Mm(3000), ShellAxis.Upright), wide, ShellDirection.Round, lap),
            5 => new PanelLay(new RectangularPanel(Mm(2400 + step), Mm(1800), [PanelOpening.Circular(Mm(500))]), wide, PanelDirection.AlongWidth, lap),
            6 => new SectionLay(SectionSizes.Find("IPE 300").OfLength(Mm(6000 + step)), wide, lap),
            _ => new SpiralLay(new StraightPipe(size, Length.FromMeters(3 + step)), wide, SpiralSetting.FromTrueLap(lap)),
        };
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static StripStock Stock(double foilUm, double widthMm) => new(
        new Tape(new Foil(Length.FromMicrometers(foilUm)), new Adhesive(Length.FromMicrometers(25))),
        Length.FromMillimeters(widthMm),
        Length.FromMeters(50));
}
