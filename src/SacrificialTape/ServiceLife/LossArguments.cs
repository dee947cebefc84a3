using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>Checks what a loss law is given.</summary>
internal static class LossArguments
{
    internal static double Years(Duration time) =>
        AcceptedRange.AtLeast(0, "a").Check(UnitConversions.Years(time), nameof(time));

    internal static double Micrometers(Length loss) =>
        AcceptedRange.AtLeast(0, "um").Check(UnitConversions.Micrometers(loss), nameof(loss));
}
