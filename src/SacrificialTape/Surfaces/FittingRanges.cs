using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>What is accepted as a dimension of a fitting, a head or a vessel.</summary>
internal static class FittingRanges
{
    private const string SlipOfUnit = "smaller is taken for metres stated as millimetres";

    private static readonly AcceptedRange Diameter = AcceptedRange.Between(1, 100_000, "mm");
    private static readonly AcceptedRange Extent = AcceptedRange.Between(1, 1e6, "mm");
    private static readonly AcceptedRange LargeDiameter = AcceptedRange.Between(10, 100_000, "mm").Noting(SlipOfUnit);
    private static readonly AcceptedRange Side = AcceptedRange.Between(10, 1e6, "mm").Noting(SlipOfUnit);
    private static readonly AcceptedRange Flange = AcceptedRange.Between(0, 100_000, "mm");
    private static readonly AcceptedRange Plate = AcceptedRange.AboveUpTo(0, 1000, "mm");

    /// <summary>A diameter: 1 mm to 100 m.</summary>
    internal static double DiameterMm(Length given, string parameter) =>
        Diameter.Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A length, a depth or a radius: 1 mm to 1000 m.</summary>
    internal static double ExtentMm(Length given, string parameter) =>
        Extent.Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A diameter of a head, a shell or a disc: 10 mm to 100 m.</summary>
    internal static double LargeDiameterMm(Length given, string parameter) =>
        LargeDiameter.Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A side of a panel: 10 mm to 1000 m.</summary>
    internal static double SideMm(Length given, string parameter) =>
        Side.Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A straight flange, which a head may lack: 0 to 100 m.</summary>
    internal static double StraightFlangeMm(Length given, string parameter) =>
        Flange.Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A plate thickness: more than 0, at most 1 m.</summary>
    internal static double ThicknessMm(Length given, string parameter) =>
        Plate.Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A hole, narrower than what it is in: at least 1 mm.</summary>
    internal static double LessThan(Length given, double outsideMm, string parameter) =>
        AcceptedRange.FromBelow(1, outsideMm, "mm").Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A thickness that leaves some of what it is taken from: more than 0, less than that.</summary>
    internal static double Inside(Length given, double highMm, string parameter) =>
        AcceptedRange.Inside(0, highMm, "mm").Check(UnitConversions.Millimeters(given), parameter);

    /// <summary>A radius or a reach that may be missing: 0 to what there is room for, to a billionth of it.</summary>
    internal static double UpTo(Length given, double highMm, string parameter)
    {
        double mm = UnitConversions.Millimeters(given);
        return mm >= 0 && WithAllowance.AtMost(mm, highMm) ? mm : throw AcceptedRange.Between(0, highMm, "mm").Refuse(mm, parameter);
    }

    /// <summary>Checks a number against bounds that depend on another dimension.</summary>
    internal static double Within(double value, double low, double high, string parameter) =>
        AcceptedRange.Between(low, high, "mm").Check(value, parameter);
}
