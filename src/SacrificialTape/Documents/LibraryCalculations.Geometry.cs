using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <content>Lays, surfaces and rolls.</content>
internal static partial class LibraryCalculations
{
    private static IEnumerable<CaseCalculation> Geometry() =>
    [
        Of("spiral.angle", "angle between strip and circumference, by true lap", [Mm("outside diameter"), Mm("strip width"), Mm("true lap")],
            TradeUnit.Degree, static given => Spiral(given).Angle.Degrees),
        Of("spiral.advance", "advance along the pipe per turn, by true lap", [Mm("outside diameter"), Mm("strip width"), Mm("true lap")],
            TradeUnit.Millimeter, static given => Spiral(given).Advance.Millimeters),
        Of("spiral.layers-on-average", "tape area over pipe area, by true lap", [Mm("outside diameter"), Mm("strip width"), Mm("true lap")],
            TradeUnit.One, static given => Spiral(given).LayersOnAverage.Ratio),
        Of("spiral.true-lap-from-lap-along-pipe", "lap across the strip where it was set along the pipe", [Mm("outside diameter"), Mm("strip width"), Mm("lap along pipe")],
            TradeUnit.Millimeter, static given => new SpiralGeometry(Long(given, "outside diameter"), Long(given, "strip width"), SpiralSetting.FromLapAlongPipe(Long(given, "lap along pipe"))).TrueLap.Millimeters),
        Of("pipe.area", "outside of a straight pipe", [Mm("outside diameter"), Mm("length")],
            TradeUnit.SquareMeter, static given => new StraightPipe(Long(given, "outside diameter"), Long(given, "length")).Area.SquareMeters),
        Of("bend.area", "outside of a smooth bend", [Mm("outside diameter"), Mm("bend radius"), Given("angle", TradeUnit.Degree)],
            TradeUnit.SquareMeter, static given => new Bend(Long(given, "outside diameter"), Long(given, "bend radius"), Angle.FromDegrees(given.In(TradeUnit.Degree, "angle"))).Area.SquareMeters),
        Of("reducer.area", "outside of a concentric reducer", [Mm("large end"), Mm("small end"), Mm("length")],
            TradeUnit.SquareMeter, static given => new ConcentricReducer(Long(given, "large end"), Long(given, "small end"), Long(given, "length")).Area.SquareMeters),
        Of("head.torispherical.area", "outside of a torispherical head by its outside measures", [Mm("outside diameter"), Mm("outside crown radius"), Mm("outside knuckle radius"), Mm("straight flange")],
            TradeUnit.SquareMeter, static given => TorisphericalHead.FromOutside(Long(given, "outside diameter"), Long(given, "outside crown radius"), Long(given, "outside knuckle radius"), Long(given, "straight flange")).Area.SquareMeters),
        Of("head.ellipsoidal.area", "outside of an ellipsoidal head by its outside measures", [Mm("outside diameter"), Mm("outside depth"), Mm("straight flange")],
            TradeUnit.SquareMeter, static given => EllipsoidalHead.FromOutside(Long(given, "outside diameter"), Long(given, "outside depth"), Long(given, "straight flange")).Area.SquareMeters),
        Of("roll.length", "strip on a wound roll", [Mm("outside diameter"), Mm("core diameter"), Mm("layer thickness")],
            TradeUnit.Meter, static given => new WoundRoll(Long(given, "outside diameter"), Long(given, "core diameter"), Long(given, "layer thickness")).StripLength.Meters),
    ];

    private static SpiralGeometry Spiral(CalculationArguments given) =>
        new(Long(given, "outside diameter"), Long(given, "strip width"), SpiralSetting.FromTrueLap(Long(given, "true lap")));

    private static Length Long(CalculationArguments given, string name) => given[name].ToLength();
}
