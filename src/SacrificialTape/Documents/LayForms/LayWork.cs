using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How much work a lay has with its strips, told before it begins.</summary>
internal static class LayWork
{
    /// <summary>Steps for each strip that a lay cuts one by one, measured against a step of a third of a microsecond.</summary>
    internal const double OnFace = 10;
    internal const double OnMitre = 3;
    internal const double OnTee = 15;
    internal const double OnSection = 15;
    internal const double OnEccentric = 3000;
    private const double OnRevolved = 2;
    private const double AnyLay = 100;

    /// <summary>Surfaces that are laid on by meridians and circles. A flat head is a disc and none of them.</summary>
    internal static IReadOnlyList<Type> Revolved { get; } =
    [
        typeof(Cap), typeof(ConcentricReducer), typeof(ConicalHead), typeof(EllipsoidalHead), typeof(HemisphericalHead), typeof(TaperedColumn), typeof(TorisphericalHead),
    ];

    /// <summary>For lays that cut their strips one by one across an extent.</summary>
    internal static void Charge(FormReader reader, Length? extent, StripStock? stock, Length leastLap, double steps) =>
        reader.CountSteps(AnyLay + (extent is { } across ? steps * Strips(UnitConversions.Millimeters(across), stock, leastLap) : 0));

    /// <summary>For lays on bodies of revolution: as many strips as the longer of circumference and meridian takes.</summary>
    internal static void ChargeRevolved(FormReader reader, Surface? surface, StripStock? stock, Length leastLap)
    {
        double extent = 0;
        if (surface is Head and not FlatHead or ConcentricReducer or TaperedColumn { BasePlate: null })
        {
            var meridian = Meridian.Of(surface, nameof(surface));
            extent = Math.Max(meridian.LengthMm, 2 * Math.PI * meridian.At(0).RadiusMm);
        }

        reader.CountSteps(AnyLay + (OnRevolved * Strips(extent, stock, leastLap)));
    }

    /// <summary>For lays on panels: each strip is held against each opening in a place. A plain rectangle is one sum.</summary>
    internal static void ChargePanel(FormReader reader, Panel? panel, StripStock? stock, Length leastLap)
    {
        double openings = panel?.Openings.Count(static opening => opening.IsPlaced) ?? 0;
        double extent = panel switch
        {
            RectangularPanel rectangle when openings > 0 => Math.Max(UnitConversions.Millimeters(rectangle.Width), UnitConversions.Millimeters(rectangle.Height)),
            CircularPanel disc => UnitConversions.Millimeters(disc.Diameter),
            AnnularPanel ring => UnitConversions.Millimeters(ring.OutsideDiameter),
            _ => 0,
        };
        reader.CountSteps(AnyLay + (OnFace * Strips(extent, stock, leastLap) * (1 + openings)));
    }

    // More than are laid one by one are refused before they are counted.
    private static double Strips(double extentMm, StripStock? stock, Length leastLap)
    {
        double step = (stock?.WidthMm ?? 0) - UnitConversions.Millimeters(leastLap);
        return step > 0 ? Math.Min(extentMm / step, StripCount.MostOneByOne) : 0;
    }
}
