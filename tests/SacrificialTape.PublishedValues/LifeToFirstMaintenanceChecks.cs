using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>The one life that was read: 85 um of zinc in C4, 20 to 40 years.</summary>
internal static class LifeToFirstMaintenanceChecks
{
    internal static CheckGroup Group => new(
        "Galvanizers Association of Australia, Basics of hot dip galvanizing, 2012",
        "Hot-dip coatings, not foil on adhesive: it checks the linear law from foil and category to years, with all of the zinc counted.",
        [
            Case("least", 20, static life => life.Earliest),
            Case("most", 40, static life => life.Latest),
        ]);

    private static PublishedCase Case(string end, double years, Func<LawLife, Lifetime> read) => new()
    {
        Id = "life-to-first-maintenance/85-um-c4/" + end,
        What = $"85 um in C4, linear law, {end}",
        Evidence = Evidence.From(References.LifeToFirstMaintenance),
        Expected = years,
        Tolerance = 0.5,
        Unit = "a",
        Compute = () => read(new LifeEstimate(
            new Foil(Length.FromMicrometers(85)),
            1,
            ZincExposure.FromCategory(CorrosivityCategory.C4),
            Utilisation.FromFraction(1),
            [LinearLoss.Law]).ByLaw[0]).Duration.Years365,
    };
}
