using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>What a lay on a surface of revolution is made from, checked.</summary>
internal readonly record struct RevolvedInput(
    Surface Surface, Meridian Meridian, StripStock Stock, double LeastLapMm, LayChoices Choices)
{
    /// <summary>Diameter of the low edge, the largest.</summary>
    internal double DiameterMm => 2 * this.Meridian.At(0).RadiusMm;

    internal static RevolvedInput Accept(Surface surface, StripStock stock, Length leastLap, LayChoices? choices)
    {
        Meridian meridian = Meridian.Of(surface, nameof(surface));
        ArgumentNullException.ThrowIfNull(stock);
        double lap = AcceptedLap.Mm(stock, leastLap, nameof(leastLap));
        if (meridian.Closes)
        {
            // The disc on the crown is as wide as the strip and must not hang over the edge of the dish.
            AcceptedRange.AboveUpTo(0, 2 * meridian.DishMm, "mm").Noting("the disc that closes the crown must lie on the dish")
                .Check(stock.WidthMm, nameof(stock));
        }

        return new(surface, meridian, stock, lap, choices ?? LayChoices.Default);
    }
}
