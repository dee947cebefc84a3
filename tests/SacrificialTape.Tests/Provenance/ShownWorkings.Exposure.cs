using FsCheck.Xunit;
using SacrificialTape.Tests.Exposure;
using SacrificialTape.Tests.ServiceLife;

namespace SacrificialTape.Tests.Provenance;

/// <content>First-year rates, and loss along curves.</content>
public sealed partial class ShownWorkings
{
    [Property(Arbitrary = [typeof(ExposureCases)])]
    public void Of_a_dose_response(SiteCase given)
    {
        foreach (Metal metal in Enum.GetValues<Metal>())
        {
            var estimate = new DoseResponse(metal, given.Air());
            IReadOnlyDictionary<string, double> shown = Checked(estimate);
            Near.Equal(estimate.Rate.MicrometersPerYear, shown["r"], 0);
            Near.Equal(estimate.LogNormal.Range.Lowest.MicrometersPerYear, shown["r_low"], 1e-12);
            Ends(shown, estimate.LogNormal.Range.Highest.MicrometersPerYear);
        }
    }

    [Property(Arbitrary = [typeof(ExposureCases)])]
    public void Of_a_coupon(CouponCase given)
    {
        CouponLoss coupon = given.Make(given.OfGrams, given.OfSquareCm);
        IReadOnlyDictionary<string, double> shown = Checked(coupon);
        Near.Equal(coupon.Rate.MicrometersPerYear, shown["r"], 0);
        Near.Equal(coupon.MassRate.GramsPerSquareMeterYear, shown["m"], 0);
        Near.Equal(coupon.StandardUncertainty!.Value.MicrometersPerYear, shown["u"], 0);
        Near.Equal(coupon.Range.Lowest.MicrometersPerYear, shown["r_low"], 0);
    }

    [Property(Arbitrary = [typeof(CurveCases)])]
    public void Of_a_life_along_a_curve(CurveCase given)
    {
        var exposure = ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(given.Rate), "a made-up coupon");
        foreach (ILossLaw law in given.Laws())
        {
            var life = new LifeEstimate(new Foil(Length.FromMicrometers(10)), 2, exposure, Utilisation.FromFraction(0.8), [law]);
            IReadOnlyDictionary<string, double> shown = Checked(life);
            Near.Equal(life.Earliest.Duration.Years365, shown["t_all"], 0);
            if (shown.TryGetValue("y_x", out double there))
            {
                Near.Equal(shown["y"], there, 1e-13);
            }
        }
    }
}
