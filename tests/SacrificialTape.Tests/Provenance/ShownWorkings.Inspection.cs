using FsCheck.Xunit;
using SacrificialTape.Tests.Inspection;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Readings, remaining lives, greatest losses, patches.</content>
public sealed partial class ShownWorkings
{
    [Property(Arbitrary = [typeof(InspectionCases)], MaxTest = 40)]
    public void Of_readings_and_their_life(ReadingCase given)
    {
        FoilReadings readings = InspectionMake.Readings(InspectionMake.Foil(), [.. given.Um, 120]);
        _ = Checked(readings);
        Ends(Checked(given.Statistics), given.Statistics.Mean.Micrometers);
        var limit = new ThicknessLimit(given.Statistics, InspectionMake.Share(given.Coverage), InspectionMake.Share(given.Confidence));
        IReadOnlyDictionary<string, double> shown = Checked(limit);
        Near.Equal(limit.Factor.Value, shown["k"], 0);
        Ends(shown, limit.Value.Micrometers);
        _ = Checked(limit.Factor);
        RemainingLifeFromReadings life = InspectionMake.Life(given.Statistics, given.Age, given.Law);
        double[] lives = [.. life.ShowWorkings().Steps.Where(static step => step.Formula.Id == "remaining.after-age").Select(static step => step.Result.Number)];
        _ = Checked(life);
        Near.Equal(life.Mean!.Value.Years365, lives[0], 1e-12);
        LargestLosses moments = new(new ValueList<Length>(given.Um.Select(InspectionMake.Um)), Area.FromSquareMeters(1), Area.FromSquareMeters(100), GumbelMethod.Moments);
        Near.Equal(moments.LargestLoss.Micrometers, Checked(moments)["x_T"], 1e-12);
        LargestLosses likelihood = new(moments.Losses, moments.SampleArea, moments.WholeArea, GumbelMethod.MaximumLikelihood);
        Near.Equal(likelihood.LargestLoss.Micrometers, Checked(likelihood)["x_T"], 1e-12);
    }

    [Property(Arbitrary = [typeof(InspectionCases)], MaxTest = 40)]
    public void Of_patches(CutOutCase given)
    {
        var patch = OvalPatch.Smallest(given.CutOut, Mm(given.MarginMm), Mm(5));
        Ends(Checked(patch), patch.Area.SquareMeters);
        Damage[] damages = [new("one", given.CutOut, PatchPlace.Flat)];
        var repairs = new RepairList([.. damages], Stock(100, 100), Mm(given.MarginMm), Mm(5), Mm(10), OverlapHandling.Flag);
        Near.Equal(repairs.Repairs[0].Strip.Count, Checked(repairs.Repairs[0])["n"], 0);
        Ends(Checked(repairs), repairs.Repairs[0].Strip.Count);
    }

    private void InspectionOnce()
    {
        this.Of_readings_and_their_life(new ReadingCase([71, 73, 72, 74, 70, 72, 31], 12, 0.813, 0.9, 0.95));
        _ = Checked(InspectionMake.Readings(InspectionMake.Foil(), 71, 73, 72, 74, 70, 72, 31, 80.5));
        this.Of_patches(new CutOutCase(true, 80, 30, 5, 1.5));
        this.Of_patches(new CutOutCase(false, 80, 30, 5, 1.5));
        _ = Checked(FoilReading.Measured(Mm(0.2), InspectionMake.Clean, 2));
        _ = Checked(FoilReading.Weighed(Area.FromSquareCentimeters(25), Mass.FromGrams(1.2), Mass.FromGrams(1.3), "made up"));
        double[] many = [.. Enumerable.Range(0, 60).Select(static i => 60 + (i * 0.1))];
        var rank = new RankLimit(InspectionMake.Statistics(many), InspectionMake.Share(0.95), InspectionMake.Share(0.95));
        Near.Equal(rank.Reached.Fraction, Checked(rank)["c"], 0);
        var byRate = new RemainingLifeByRate(Mm(0.1), new ThicknessPoint(InspectionMake.Years(14), Mm(0.07)), Mm(0.02), new ThicknessPoint(InspectionMake.Years(10), Mm(0.08)));
        Ends(Checked(byRate), byRate.Remaining!.Value.Years365);
        var between = new LossBetween(InspectionMake.Statistics(80, 84, 82), InspectionMake.Statistics(70, 72, 75), InspectionMake.Years(4), InspectionMake.Share(0.95));
        Ends(Checked(between), between.MostLoss.Micrometers);
        var single = new SingleReading(InspectionMake.Foil(), FoilReading.Measured(Mm(0.08), InspectionMake.Clean), InspectionMake.Years(10));
        Ends(Checked(single), single.Rate!.Value.MicrometersPerYear);
        var next = new NextInspection(InspectionMake.Years(4), RuleSet.Default);
        Ends(Checked(next), next.Interval.Years365);
        var check = new PredictionCheck(InspectionMake.Life(InspectionMake.Statistics(70, 72, 75), 9, LinearLoss.Law), ZincExposure.FromCategory(CorrosivityCategory.C3));
        Ends(Checked(check), check.RatioToHighest);
        var repairs = new RepairList([new Damage("bend", CutOut.Circle(Mm(20)), PatchPlace.OnBend(new Bend(Mm(168.3), Mm(229), Angle.FromDegrees(90))))], Stock(100, 100), Mm(5), Mm(5), Mm(10), OverlapHandling.Flag);
        Ends(Checked(repairs.Repairs[0]), repairs.Repairs[0].Stretch!.Value.Fraction);
        var money = new Money(100, "EUR");
        _ = Checked(new RepairComparison(Area.FromSquareMeters(10), repairs, money, InspectionMake.Years(8), money, Lifetime.Of(InspectionMake.Years(30)), DiscountRate.FromFractionPerYear(0.03)));
    }
}
