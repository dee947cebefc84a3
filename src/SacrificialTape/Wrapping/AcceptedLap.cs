using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>The laps that a strip can have: what every lay asks of its argument.</summary>
internal static class AcceptedLap
{
    /// <summary>The lap in mm; zero or more and less than the strip is wide, or the argument is refused.</summary>
    internal static double Mm(StripStock stock, Length lap, string parameter) =>
        AcceptedRange.FromBelow(0, stock.WidthMm, "mm").Noting("less than the strip is wide").Check(UnitConversions.Millimeters(lap), parameter);
}
