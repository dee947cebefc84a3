using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/zinc-life.md quotes.</summary>
public static class ZincLifePage
{
    public static void BothLaws()
    {
        #region both-laws
        var foil = new Foil(Length.FromMicrometers(100));
        var exposure = ZincExposure.FromCategory(CorrosivityCategory.C3);
        var life = new LifeEstimate(foil, 1, exposure, Utilisation.FromFraction(0.8));
        foreach (LawLife law in life.ByLaw)
        {
            Console.WriteLine($"{law.Law.Name}: {law.Earliest} to {law.Latest}  [{law.Law.Basis}]");
        }

        Console.WriteLine($"design for {life.Earliest}; plausible to {life.Latest}");
        #endregion
    }

    public static void PublishedCoating()
    {
        #region published-coating
        var life = new LifeEstimate(
            new Foil(Length.FromMicrometers(85)),
            1,
            ZincExposure.FromCategory(CorrosivityCategory.C4),
            Utilisation.FromFraction(1),
            [LinearLoss.Law]);
        Console.WriteLine($"{life.Earliest} to {life.Latest}");
        #endregion
    }

    public static void TwoLayers()
    {
        #region two-layers
        var exposure = ZincExposure.FromCategory(CorrosivityCategory.C3);
        var usable = Utilisation.FromFraction(0.8);
        var restarted = new LifeEstimate(new Foil(Length.FromMicrometers(100)), 2, exposure, usable, [PowerLawLoss.ZincMean]);
        var oneThick = new LifeEstimate(new Foil(Length.FromMicrometers(200)), 1, exposure, usable, [PowerLawLoss.ZincMean]);
        Console.WriteLine($"two layers of 100 um: {restarted.Earliest}; one foil of 200 um: {oneThick.Earliest}");
        #endregion
    }

    public static void Measured()
    {
        #region measured
        var exposure = ZincExposure.FromMeasurement(
            CorrosionRate.FromMicrometersPerYear(1.1),
            CorrosionRate.FromMicrometersPerYear(1.6),
            "invented: zinc coupons on this rack, one year");
        var foil = new Foil(Length.FromMicrometers(100), tolerance: Length.FromMicrometers(5));
        var life = new LifeEstimate(foil, 1, exposure, Utilisation.FromFraction(0.8), [LinearLoss.Law]);
        Console.WriteLine($"{life.Earliest} to {life.Latest}  [{exposure.Basis}]");
        #endregion
    }
}
