using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/how-sure-are-we.md quotes.</summary>
public static class HowSureAreWePage
{
    public static void OutOfTen()
    {
        #region out-of-ten
        var uncertainty = new LifeUncertainty(
            UncertainRate.FromCategory(CorrosivityCategory.C4, Probability.FromFraction(0.05)),
            LossGrowth.Linear,
            UncertainUtilisation.Triangular(
                Utilisation.FromFraction(0.6), Utilisation.FromFraction(0.8), Utilisation.FromFraction(0.95)),
            ToleranceShape.Triangular);
        var foil = new Foil(Length.FromMicrometers(100), Length.FromMicrometers(10));
        for (int layers = 1; layers <= 2; layers++)
        {
            var life = new LifeDistribution(foil, layers, uncertainty);
            double nine = life.ReachedWith(Probability.FromFraction(0.9)).Duration.Years365;
            double five = life.ReachedWith(Probability.FromFraction(0.5)).Duration.Years365;
            double chance = life.ChanceOf(Lifetime.Of(Duration.FromYears365(25))).Fraction;
            Console.WriteLine(FormattableString.Invariant(
                $"{layers} layer(s): nine in ten reach {nine:0} years, five in ten {five:0}; chance of 25 years {100 * chance:0.0} in 100"));
        }
        #endregion
    }
}
