using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/life-with-uncertainty.md quotes.</summary>
public static class LifeWithUncertaintyPage
{
    private static readonly LifeUncertainty Yard = new(
        UncertainRate.FromCategory(CorrosivityCategory.C3, Probability.FromFraction(0.05)),
        LossGrowth.PowerLaw(UncertainExponent.Zinc, AfterTwentyYears.Tangent),
        UncertainUtilisation.Triangular(Utilisation.FromFraction(0.6), Utilisation.FromFraction(0.8), Utilisation.FromFraction(0.95)),
        ToleranceShape.Triangular);

    public static void ClosedForm()
    {
        #region closed-form
        var uncertainty = new LifeUncertainty(
            UncertainRate.FromCategory(CorrosivityCategory.C3, Probability.FromFraction(0.05)),
            LossGrowth.Linear,
            UncertainUtilisation.Exactly(Utilisation.FromFraction(0.8)),
            ToleranceShape.Uniform);
        var life = new LifeDistribution(new Foil(Length.FromMicrometers(100)), 1, uncertainty);
        Console.WriteLine(uncertainty.Rate);
        Console.WriteLine(life.LogNormal);
        Console.WriteLine(life.ShowReachedWith(Probability.FromFraction(0.9)));
        #endregion
    }

    public static void AllUncertain()
    {
        #region all-uncertain
        var uncertainty = new LifeUncertainty(
            UncertainRate.FromCategory(CorrosivityCategory.C3, Probability.FromFraction(0.05)),
            LossGrowth.PowerLaw(UncertainExponent.Zinc, AfterTwentyYears.Tangent),
            UncertainUtilisation.Triangular(
                Utilisation.FromFraction(0.6), Utilisation.FromFraction(0.8), Utilisation.FromFraction(0.95)),
            ToleranceShape.Triangular);
        var foil = new Foil(Length.FromMicrometers(100), Length.FromMicrometers(10));
        var life = new LifeDistribution(foil, 1, uncertainty);
        foreach (double confidence in new[] { 0.99, 0.95, 0.9, 0.5, 0.1 })
        {
            Console.WriteLine(FormattableString.Invariant(
                $"reached with {confidence:0.00}: {life.ReachedWith(Probability.FromFraction(confidence))}"));
        }

        double chance = life.ChanceOf(Lifetime.Of(Duration.FromYears365(50))).Fraction;
        Console.WriteLine(FormattableString.Invariant($"chance of 50 years: {chance:0.000}"));
        #endregion
    }

    public static void Design()
    {
        LifeUncertainty uncertainty = Yard;
        #region design
        var design = new LifeDesign(uncertainty, Lifetime.Of(Duration.FromYears365(60)), Probability.FromFraction(0.9));
        Length least = design.LeastThickness(1, Length.FromMicrometers(10))!.Value;
        Console.WriteLine(FormattableString.Invariant($"one layer of at least {least.Micrometers:0.0} um"));
        Foil Stocked(double um) => new(Length.FromMicrometers(um), Length.FromMicrometers(10));
        Console.WriteLine($"in stock: {design.ThinnestOf([Stocked(80), Stocked(100), Stocked(150)], 1)}");
        Console.WriteLine($"layers of 50 um: {design.LeastLayers(Stocked(50))}, each lasts {design.OneLayer(Stocked(50))}");
        #endregion
    }

    public static void Plan()
    {
        LifeUncertainty uncertainty = Yard;
        #region plan
        var life = new LifeDistribution(new Foil(Length.FromMicrometers(100), Length.FromMicrometers(10)), 2, uncertainty);
        var plan = new LifePlan(life, Probability.FromFraction(0.9));
        foreach (ZincLeftPoint point in plan.Curve([Duration.FromYears365(10), Duration.FromYears365(30), Duration.FromYears365(60)]))
        {
            Console.WriteLine(FormattableString.Invariant($"after {point.Time.Years365:0} a at least {100 * point.Left.Fraction:0.0} % left"));
        }

        Console.WriteLine($"a third left until {plan.Until(ZincShare.FromFraction(1 / 3.0))}");
        foreach (DateOnly day in plan.Inspections(new DateOnly(2030, 5, 1), [ZincShare.FromFraction(0.9), ZincShare.FromFraction(0.75)]))
        {
            Console.WriteLine(FormattableString.Invariant($"look on {day:yyyy-MM-dd}"));
        }
        #endregion
    }

    public static void HotDip()
    {
        LifeUncertainty uncertainty = Yard;
        #region hot-dip
        var tape = new LifeDistribution(new Foil(Length.FromMicrometers(100), Length.FromMicrometers(10)), 1, uncertainty);
        var coating = HotDipCoating.Iso1461(Length.FromMillimeters(8), HotDipValue.Mean);
        var both = new HotDipComparison(tape, coating, Probability.FromFraction(0.9));
        Console.WriteLine($"tape {both.TapeLife}, hot dip {both.CoatingLife}  [{coating.Basis}]");
        Console.WriteLine(FormattableString.Invariant($"the tape is worth {both.EqualCoating.Micrometers:0.0} um of hot-dip zinc"));
        #endregion
    }

    public static void OneRate()
    {
        LifeUncertainty uncertainty = Yard;
        #region one-rate
        var foil = new Foil(Length.FromMicrometers(100), Length.FromMicrometers(10));
        var one = new LifeDistribution(foil, 1, uncertainty);
        var two = new LifeDistribution(foil, 2, uncertainty);
        double Reached(double years) => one.ChanceOf(Lifetime.Of(Duration.FromYears365(years))).Fraction;
        foreach (double confidence in new[] { 0.99, 0.9, 0.5, 0.1 })
        {
            double years = two.ReachedWith(Probability.FromFraction(confidence)).Duration.Years365;

            // If the two layers had nothing to do with one another: their lives add up, slice by slice.
            const int Slices = 20_000;
            double apart = Reached(years);
            for (int i = 0; i < Slices; i++)
            {
                double slice = Reached(years * i / Slices) - Reached(years * (i + 1) / Slices);
                apart += slice * Reached(years * (Slices - i - 0.5) / Slices);
            }

            Console.WriteLine(FormattableString.Invariant(
                $"{years:0} years: chance {confidence:0.00} with one rate, {apart:0.000} with two rates apart"));
        }
        #endregion
    }
}
