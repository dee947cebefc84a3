using SacrificialTape.Provenance;

namespace SacrificialTape.Galvanic;

/// <summary>Current demand of bare steel, mA/ft2, as printed.</summary>
internal static class DemandTable
{
    internal static Basis Basis => Basis.From(References.CurrentRequirements);

    internal static (string Name, double Low, double High) MilliamperesPerSquareFoot(DemandMedium medium) => medium switch
    {
        DemandMedium.SoilBelow1000OhmCm => ("soil below 1000 ohm.cm", 6, 25),
        DemandMedium.Soil1000To10000OhmCm => ("soil 1000 to 10000 ohm.cm", 3, 6),
        DemandMedium.Soil10000To30000OhmCm => ("soil 10000 to 30000 ohm.cm", 2, 3),
        DemandMedium.SoilAbove30000OhmCm => ("soil above 30000 ohm.cm", 1, 2),
        DemandMedium.SoilWithBacteria => ("aggressive soil, anaerobic bacteria", 15, 40),
        DemandMedium.FreshWaterStill => ("fresh water, still", 2, 4),
        DemandMedium.FreshWaterMoving => ("fresh water, moving", 4, 6),
        DemandMedium.FreshWaterTurbulentOrHot => ("fresh water, turbulent or hot", 5, 15),
        DemandMedium.SeawaterStill => ("seawater, still", 1, 3),
        DemandMedium.SeawaterMoving => ("seawater, moving", 3, 25),
        DemandMedium.Concrete => ("concrete", 0.5, 1.5),
        _ => throw new ArgumentOutOfRangeException(nameof(medium), medium, "Not a medium of the table."),
    };
}
