using SacrificialTape.Provenance;
using SacrificialTape.Tapes;

namespace SacrificialTape.PublishedValues;

/// <summary>Strip on a wound roll, against the printed formula and against laying its turns one by one.</summary>
internal static class MaterialOnARollChecks
{
    internal static CheckGroup Group => new(
        "Math Forum, 'Determining Length of Material Remaining on a Roll', 2003",
        "The source prints L = pi (Do + Di)(Do - Di)/(4 t) and no worked number. It also says to take t from a roll of known length and not from a micrometer. The sums lay one turn after another at its mean diameter, which the closed formula does not do.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        yield return Length(200, 76, 0.25, "formula", 34_224 * 3.14159265358979, 1e-6, Evidence.FromFormula(
            References.MaterialOnARoll, "276 x 124/(4 x 0.25) = 34 224, times pi"));
        yield return Length(400, 76, 0.09, "formula", 428_400 * 3.14159265358979, 1e-5, Evidence.FromFormula(
            References.MaterialOnARoll, "476 x 324/(4 x 0.09) = 428 400, times pi"));
        foreach ((double outside, double core, double layer, int turns) in new[]
        {
            (200.0, 76.0, 0.25, 248), (400.0, 76.0, 0.09, 1800), (120.0, 40.0, 0.2, 200),
        })
        {
            yield return Length(outside, core, layer, "turns", TurnByTurn(core, layer, turns), 1e-5, Evidence.FirstPrinciples(
                FormattableString.Invariant($"{turns} turns laid one on another, each pi times its mean diameter, summed")));
        }

        yield return new PublishedCase
        {
            Id = "roll/layer-from-known-length",
            What = "layer of a roll 200/76 mm that holds 34 224 pi mm",
            Evidence = Evidence.FromFormula(References.MaterialOnARoll, "the same numbers read backwards: t = 0.25"),
            Expected = 0.25,
            Tolerance = 1e-12,
            Unit = "mm",
            Compute = () => WoundRoll.LayerThicknessFrom(
                UnitsNet.Length.FromMillimeters(200),
                UnitsNet.Length.FromMillimeters(76),
                UnitsNet.Length.FromMillimeters(34_224 * Math.PI)).Millimeters,
        };
    }

    private static double TurnByTurn(double core, double layer, int turns)
    {
        double length = 0;
        double diameter = core + layer;
        for (int turn = 0; turn < turns; turn++)
        {
            length += Math.PI * diameter;
            diameter += 2 * layer;
        }

        return length;
    }

    private static PublishedCase Length(
        double outside, double core, double layer, string way, double expected, double tolerance, Evidence evidence) => new()
        {
            Id = FormattableString.Invariant($"roll/{way}-{outside}-{core}-{layer}"),
            What = FormattableString.Invariant($"strip on a roll {outside}/{core} mm, layer {layer} mm"),
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = "mm",
            Compute = () => new WoundRoll(
                UnitsNet.Length.FromMillimeters(outside),
                UnitsNet.Length.FromMillimeters(core),
                UnitsNet.Length.FromMillimeters(layer)).StripLength.Millimeters,
        };
}
