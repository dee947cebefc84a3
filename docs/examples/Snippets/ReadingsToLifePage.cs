using SacrificialTape.Exposure;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/readings-to-life.md quotes.</summary>
public static class ReadingsToLifePage
{
    private static readonly Foil Foil = new(Length.FromMicrometers(100));

    private static readonly ReadingPreparation Cleaned = new(true, Length.FromMicrometers(25), "brushed under water, adhesive left on and taken off the reading");

    // An invented line: nine spots after twelve years, of which one was read on a sound lap.
    private static readonly FoilReadings Line = new(
        Foil,
        new ValueList<FoilReading>(new double[] { 97, 99, 96, 101, 98, 95, 100, 97, 122 }.Select(
            static um => FoilReading.Measured(Length.FromMicrometers(um), Cleaned))),
        Probability.FromFraction(0.05));

    public static void Readings()
    {
        #region readings
        var foil = new Foil(Length.FromMicrometers(100));
        var cleaned = new ReadingPreparation(
            productsRemoved: true, Length.FromMicrometers(25), "brushed under water, adhesive left on and taken off the reading");
        double[] micrometer = [97, 99, 96, 101, 98, 95, 100, 97, 122];
        var readings = new FoilReadings(
            foil,
            new ValueList<FoilReading>(micrometer.Select(um => FoilReading.Measured(Length.FromMicrometers(um), cleaned))),
            significance: Probability.FromFraction(0.05));
        Console.WriteLine(readings.All);
        Console.WriteLine(readings.WithoutOutliers);
        foreach (FlaggedReading outlier in readings.Outliers)
        {
            Console.WriteLine(outlier);
        }
        #endregion
    }

    public static void Limits()
    {
        ReadingStatistics statistics = Line.WithoutOutliers!;
        #region limits
        Probability ninety = Probability.FromFraction(0.9);
        Probability sure = Probability.FromFraction(0.95);
        Console.WriteLine(new ToleranceFactor(statistics.Count, ninety, sure));
        Console.WriteLine(new ThicknessLimit(statistics, ninety, sure));
        Console.WriteLine(new RankLimit(statistics, ninety, sure));
        #endregion
    }

    public static void Life()
    {
        ReadingStatistics statistics = Line.WithoutOutliers!;
        Foil foil = Foil;
        #region life
        Length required = PerforationLimit.Of(foil, Utilisation.FromFraction(0.8));
        foreach (ILossLaw law in new ILossLaw[] { LinearLoss.Law, PowerLawLoss.ZincMean })
        {
            var life = new RemainingLifeFromReadings(
                foil, statistics, Duration.FromYears365(12), required, law,
                coverage: Probability.FromFraction(0.9), confidence: Probability.FromFraction(0.95));
            Console.WriteLine($"{law.Name}: {life}");
            Console.WriteLine($"  first-year rate {life.FirstYear}, look again {new NextInspection(life.OfThinSpots, RuleSet.Default)}");
        }
        #endregion
    }

    public static void Rates()
    {
        #region rates
        var before = new ThicknessPoint(Duration.FromYears365(8), Length.FromMicrometers(84));
        var now = new ThicknessPoint(Duration.FromYears365(12), Length.FromMicrometers(73));
        foreach (RateChoice choice in Enum.GetValues<RateChoice>())
        {
            var life = new RemainingLifeByRate(Length.FromMicrometers(100), now, Length.FromMicrometers(20), before, choice);
            Console.WriteLine($"{choice}: {life}");
        }

        var thicker = new ThicknessPoint(Duration.FromYears365(12), Length.FromMicrometers(101));
        Console.WriteLine(new RemainingLifeByRate(Length.FromMicrometers(100), thicker, Length.FromMicrometers(20)));
        #endregion
    }

    public static void Prediction()
    {
        ReadingStatistics statistics = Line.WithoutOutliers!;
        Foil foil = Foil;
        #region prediction
        var life = new RemainingLifeFromReadings(
            foil, statistics, Duration.FromYears365(12), Length.FromMicrometers(20), PowerLawLoss.ZincMean,
            Probability.FromFraction(0.9), Probability.FromFraction(0.95));
        var check = new PredictionCheck(life, ZincExposure.FromCategory(CorrosivityCategory.C3));
        Console.WriteLine(check);
        ZincExposure corrected = check.Corrected("invented line, north side");
        Console.WriteLine($"{corrected.FirstYear}  [{corrected.Basis}]");
        foreach (Finding finding in check.Judge(RuleSet.Default, "line 7"))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }

    public static void Extremes()
    {
        #region extremes
        double[] greatest = [24, 31, 27, 36, 29, 42, 33, 26];
        foreach (GumbelMethod method in Enum.GetValues<GumbelMethod>())
        {
            var losses = new LargestLosses(
                new ValueList<Length>(greatest.Select(um => Length.FromMicrometers(um))),
                sampleArea: Area.FromSquareMeters(0.05), wholeArea: Area.FromSquareMeters(6), method);
            Console.WriteLine($"{method}: {losses}");
            Console.WriteLine(FormattableString.Invariant(
                $"  by the shortcut {losses.LargestLossByLogarithm.Micrometers:0.00} um; with 95 % not above {losses.NotExceededWith(Probability.FromFraction(0.95)).Micrometers:0.0} um"));
        }
        #endregion
    }
}
