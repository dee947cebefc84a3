using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/loss-laws.md quotes.</summary>
public static class LossLawsPage
{
    public static void ThreeQuestions()
    {
        #region three-questions
        PowerLawLoss law = PowerLawLoss.ZincMean;
        CorrosionRate firstYear = CorrosionRate.FromMicrometersPerYear(2.1);
        var time = Duration.FromYears365(10);
        Length loss = law.Loss(firstYear, time);
        Console.WriteLine(FormattableString.Invariant($"after 10 a {loss.Micrometers:0.00} um, then {law.RateAt(firstYear, time)}"));
        Console.WriteLine($"back again: {law.TimeToLoss(firstYear, loss)}");
        #endregion
    }

    public static void ConstantRates()
    {
        #region constant-rates
        var law = new PiecewiseLoss(
            "our trench",
            [
                new RatePeriod(CorrosionRate.FromMicrometersPerYear(12), Duration.FromYears365(2)),
                new RatePeriod(CorrosionRate.FromMicrometersPerYear(5), Duration.FromYears365(8)),
            ],
            CorrosionRate.FromMicrometersPerYear(3),
            Basis.OwnExperience("invented for this page"));
        Console.WriteLine(law.TimeToLoss(law.FirstYear, Length.FromMicrometers(80)));
        Console.WriteLine(law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(24), Length.FromMicrometers(160)));
        #endregion
    }

    public static void Curve()
    {
        #region curve
        LossPoint At(double years, double micrometers) =>
            new(Duration.FromYears365(years), Length.FromMicrometers(micrometers));
        var curve = new MeasuredLoss(
            [At(1, 2), At(3, 5), At(7, 8), At(20, 14)],
            CurveInterpolation.MonotoneCubic,
            CurveEnd.LastChord,
            Basis.OwnExperience("invented for this page"));
        Console.WriteLine(curve.ShowTimeToLoss(curve.FirstYear, Length.FromMicrometers(10)));

        ZincExposure exposure = ZincExposure.FromMeasurement(curve.FirstYear, "invented for this page");
        var life = new LifeEstimate(new Foil(Length.FromMicrometers(100)), 1, exposure, Utilisation.FromFraction(0.8), [curve]);
        Console.WriteLine(life);
        foreach (Finding finding in life.Judge(Lifetime.Of(Duration.FromYears365(20)), RuleSet.Default, "Line 3"))
        {
            Console.WriteLine($"{finding.Severity} [{finding.Rule.Id}] {finding.Measured}");
        }
        #endregion
    }
}
