using FsCheck.Xunit;
using MathNet.Numerics.Interpolation;

namespace SacrificialTape.Tests.ServiceLife;

[Properties(Arbitrary = [typeof(CurveCases)], MaxTest = 400)]
public sealed class LossCurves
{
    [Property]
    public void Loss_and_time_are_inverse_of_one_another(CurveCase given)
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(given.Rate);
        foreach (ILossLaw law in given.Laws())
        {
            double years = given.Share * given.LastYear;
            Length loss = law.Loss(rate, Duration.FromYears365(years));
            Lifetime back = law.TimeToLoss(rate, loss);
            Near.Equal(loss.Micrometers, law.Loss(rate, back.Duration).Micrometers, 1e-12, law.Name);

            // Where the curve is nearly flat a last digit of the loss is worth more time.
            double slope = law.RateAt(rate, Duration.FromYears365(years)).MicrometersPerYear;
            if (slope > 1e-3 * loss.Micrometers / years)
            {
                Near.Equal(years, back.Duration.Years365, 1e-11, law.Name);
            }
        }
    }

    [Property]
    public void The_rate_is_the_slope_of_the_loss(CurveCase given)
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(given.Rate);
        double years = given.Share * given.LastYear;
        double corner = given.Points().Min(point => Math.Abs(point.Time.Years365 - years));
        const double Step = 1e-5;
        if (corner < 2 * Step)
        {
            return;
        }

        foreach (ILossLaw law in (ILossLaw[])[.. given.Laws(), LinearLoss.Law, PowerLawLoss.ZincMean, PowerLawLoss.SteelUpper])
        {
            double Loss(double at) => law.Loss(rate, Duration.FromYears365(at)).Micrometers;
            double slope = (Loss(years + Step) - Loss(years - Step)) / (2 * Step);
            Near.Equal(slope, law.RateAt(rate, Duration.FromYears365(years)).MicrometersPerYear, 1e-4, law.Name, absolute: 1e-5 * given.Rate);
        }
    }

    [Property]
    public void A_curve_goes_through_its_points_and_always_rises(CurveCase given)
    {
        foreach (CurveInterpolation interpolation in Enum.GetValues<CurveInterpolation>())
        {
            MeasuredLoss law = given.Measured(interpolation, CurveEnd.Refuse);
            double before = 0;
            foreach (LossPoint point in law.Points)
            {
                Near.Equal(point.Loss.Micrometers, law.Loss(law.FirstYear, point.Time).Micrometers, 1e-13);
            }

            for (int i = 1; i <= 200; i++)
            {
                double loss = law.Loss(law.FirstYear, law.Points[^1].Time * (i / 200.0)).Micrometers;
                Assert.True(loss > before);
                before = loss;
            }

            Near.Equal(law.FirstYear.MicrometersPerYear, law.Loss(law.FirstYear, Duration.FromYears365(1)).Micrometers, 1e-14);
        }
    }

    [Property]
    public void The_cubic_is_that_of_a_general_library(CurveCase given)
    {
        MeasuredLoss law = given.Measured(CurveInterpolation.MonotoneCubic, CurveEnd.Refuse);
        var other = CubicSpline.InterpolatePchip(
            [0, .. law.Points.Select(static point => point.Time.Years365)], [0, .. law.Points.Select(static point => point.Loss.Micrometers)]);
        for (int i = 0; i <= 100; i++)
        {
            double years = given.LastYear * i / 100;
            var time = Duration.FromYears365(Math.Min(years, law.Points[^1].Time.Years365));
            Near.Equal(other.Interpolate(time.Years365), law.Loss(law.FirstYear, time).Micrometers, 1e-12, absolute: 1e-12);
        }
    }

    [Property]
    public void Constant_rates_add_up(CurveCase given)
    {
        PiecewiseLoss law = given.Piecewise();
        double years = given.Share * given.LastYear;
        double left = years;
        double sum = 0;
        foreach ((double length, double um) in given.Steps)
        {
            double spent = Math.Min(length, left);
            sum += spent * um / length;
            left -= spent;
        }

        sum += left * law.Afterwards.MicrometersPerYear;
        Near.Equal(sum, law.Loss(law.FirstYear, Duration.FromYears365(years)).Micrometers, 1e-12);

        // The straight curve through the corners is the same law.
        MeasuredLoss straight = given.Measured(CurveInterpolation.Linear, CurveEnd.LastChord);
        Near.Equal(sum, straight.Loss(straight.FirstYear, Duration.FromYears365(years)).Micrometers, 1e-12);
    }

    [Property]
    public void Only_the_ratio_to_the_first_year_counts(CurveCase given)
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(given.Rate);
        CorrosionRate twice = CorrosionRate.FromMicrometersPerYear(2 * given.Rate);
        var time = Duration.FromYears365(given.Share * given.LastYear);
        foreach (ILossLaw law in given.Laws())
        {
            Near.Equal(2 * law.Loss(rate, time).Micrometers, law.Loss(twice, time).Micrometers, 1e-14);
            Near.Equal(2 * law.RateAt(rate, time).MicrometersPerYear, law.RateAt(twice, time).MicrometersPerYear, 1e-14);
            Near.Equal(
                law.TimeToLoss(rate, Length.FromMicrometers(given.Rate)).Duration.Years365,
                law.TimeToLoss(twice, Length.FromMillimeters(given.Rate / 500)).Duration.Years365,
                1e-12);
            Near.Equal(given.Rate, law.Loss(rate, Duration.FromYears365(1)).Micrometers, 1e-12);
            Near.Equal(given.Rate, FirstYearLoss.Under(law, law.Loss(rate, time), time).MicrometersPerYear, 1e-13);
            Assert.True(law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(0), Length.FromMicrometers(1)).IsUnlimited);
            Assert.Equal("0 a", law.TimeToLoss(rate, Length.Zero).ToString());
            Assert.Equal(0, law.Loss(CorrosionRate.FromMicrometersPerYear(0), time).Micrometers);
        }
    }

    [Property]
    public void Beyond_its_last_point_a_curve_refuses_or_goes_on_straight_with_a_finding(CurveCase given)
    {
        MeasuredLoss ends = given.Measured(CurveInterpolation.MonotoneCubic, CurveEnd.Refuse);
        CorrosionRate rate = ends.FirstYear;
        LossPoint last = ends.Points[^1];
        Errors.Refused(() => ends.Loss(rate, last.Time * 1.01), "time", "the last point of the curve");
        Errors.Refused(() => ends.RateAt(rate, last.Time * 1.01), "time", "the last point of the curve");
        Errors.Refused(() => ends.TimeToLoss(rate, last.Loss * 1.01), "loss", "the last point of the curve");
        Near.Equal(last.Time.Years365, ends.TimeToLoss(rate, ends.Loss(rate, last.Time)).Duration.Years365, 1e-13);

        MeasuredLoss onward = given.Measured(CurveInterpolation.MonotoneCubic, CurveEnd.LastChord);
        double first = onward.Loss(rate, last.Time * 2).Micrometers - last.Loss.Micrometers;
        double second = onward.Loss(rate, last.Time * 3).Micrometers - last.Loss.Micrometers;
        Near.Equal(2 * first, second, 1e-11);
        Assert.Empty(onward.Judge(Lifetime.Of(last.Time), RuleSet.Default, "A-1"));
        Finding said = Assert.Single(onward.Judge(Lifetime.Of(last.Time * 1.01), RuleSet.Default, "A-1"));
        Assert.Equal(RuleIds.LossCurveExtrapolated, said.Rule.Id);
        Assert.Single(onward.Judge(Lifetime.Unlimited, RuleSet.Default, "A-1"));
    }

    [Fact]
    public void An_end_tangent_carries_on_the_slope_and_is_refused_when_flat()
    {
        MeasuredLoss law = Measured([(1, 2), (5, 8), (10, 13)], CurveInterpolation.MonotoneCubic, CurveEnd.EndTangent);
        CorrosionRate rate = law.FirstYear;
        double slope = law.RateAt(rate, Duration.FromYears365(10)).MicrometersPerYear;
        Near.Equal(13 + (4 * slope), law.Loss(rate, Duration.FromYears365(14)).Micrometers, 1e-13);

        // By hand: chords 1.5 and 1 over 4 and 5 years give ((2*5 + 4)*1 - 5*1.5)/9.
        Near.Equal(6.5 / 9, slope, 1e-14);
        Assert.Contains("flat at its last point", Assert.Throws<ArgumentException>(static () => Measured(
            [(1, 2), (2, 20), (10, 21)], CurveInterpolation.MonotoneCubic, CurveEnd.EndTangent)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_life_along_a_measured_curve_says_when_it_outruns_it()
    {
        MeasuredLoss law = Measured([(1, 2), (5, 8), (10, 13)], CurveInterpolation.Linear, CurveEnd.LastChord);
        LifeEstimate Of(double foilMm) => new(
            new Foil(Make.Mm(foilMm)),
            2,
            ZincExposure.FromMeasurement(law.FirstYear, "invented"),
            Utilisation.FromFraction(1),
            [law]);
        Assert.Equal("10 a to 10 a", Of(0.008).ToString());
        Assert.DoesNotContain(Of(0.008).Judge(Lifetime.Of(Duration.FromYears365(1)), RuleSet.Default, "A-1"), static one => one.Rule.Id == RuleIds.LossCurveExtrapolated);
        Assert.Contains(Of(0.014).Judge(Lifetime.Of(Duration.FromYears365(1)), RuleSet.Default, "A-1"), static one => one.Rule.Id == RuleIds.LossCurveExtrapolated);
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        var basis = Basis.OwnExperience("invented");
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(1);
        CorrosionRate none = CorrosionRate.FromMicrometersPerYear(0);
        Errors.Refused(() => new RatePeriod(none, Duration.FromYears365(1)), "rate", "more than 0 um/a");
        Errors.Refused(() => new RatePeriod(rate, Duration.Zero), "length", "more than 0 a");
        Errors.Refused(() => new PiecewiseLoss("x", [new RatePeriod(rate, Duration.FromYears365(1))], none, basis), "afterwards", "more than 0 um/a");
        Assert.Contains("at least one period", Assert.Throws<ArgumentException>(() => new PiecewiseLoss("x", [], rate, basis)).Message, StringComparison.Ordinal);
        Errors.Refused(static () => new LossPoint(Duration.Zero, Length.FromMicrometers(1)), "time", "more than 0 a");
        Errors.Refused(static () => new LossPoint(Duration.FromYears365(1), Length.Zero), "loss", "more than 0 um");
        Errors.Refused(static () => Measured([(0.5, 1)], CurveInterpolation.Linear, CurveEnd.Refuse), "points", "0.5 a", "at least 1 a");
        Errors.Refused(static () => Measured([(1, 1)], (CurveInterpolation)5, CurveEnd.Refuse), "interpolation");
        Errors.Refused(static () => Measured([(1, 1)], CurveInterpolation.Linear, (CurveEnd)5), "end");
        Assert.Throws<ArgumentException>(static () => Measured([(1, 1)], CurveInterpolation.MonotoneCubic, CurveEnd.Refuse));
        Assert.Contains("point 2 does not rise", Assert.Throws<ArgumentException>(
            static () => Measured([(1, 2), (2, 2)], CurveInterpolation.Linear, CurveEnd.Refuse)).Message, StringComparison.Ordinal);
        Errors.Refused(() => PowerLawLoss.ZincMean.RateAt(rate, Duration.Zero), "time", "more than 0 a");
        Errors.Refused(() => LinearLoss.Law.RateAt(rate, Duration.FromYears365(-1)), "time", "at least 0 a");
        Errors.Refused(() => FirstYearLoss.Under(LinearLoss.Law, Length.FromMicrometers(1), Duration.Zero), "time", "more than 0 a");
    }

    [Fact]
    public void A_straight_curve_that_stops_keeps_at_its_last_point_the_slope_that_leads_there()
    {
        MeasuredLoss law = Measured([(1, 2), (5, 8), (10, 13)], CurveInterpolation.Linear, CurveEnd.Refuse);
        Assert.Equal(1, law.RateAt(law.FirstYear, Duration.FromYears365(10)).MicrometersPerYear);
        Assert.Equal(10, law.TimeToLoss(law.FirstYear, Length.FromMicrometers(13)).Duration.Years365);
    }

    [Fact]
    public void Laws_of_the_same_making_are_equal()
    {
        static PiecewiseLoss Soil(double later) => new(
            "soil",
            [new RatePeriod(CorrosionRate.FromMicrometersPerYear(15), Duration.FromYears365(2))],
            CorrosionRate.FromMicrometersPerYear(later),
            Basis.OwnExperience("invented"));
        Assert.Equal(Soil(4), Soil(4));
        Assert.Equal(Soil(4).GetHashCode(), Soil(4).GetHashCode());
        Assert.NotEqual(Soil(4), Soil(5));
        Assert.Equal(
            Measured([(1, 2), (5, 8)], CurveInterpolation.Linear, CurveEnd.Refuse), Measured([(1, 2), (5, 8)], CurveInterpolation.Linear, CurveEnd.Refuse));
        Assert.NotEqual(
            Measured([(1, 2), (5, 8)], CurveInterpolation.Linear, CurveEnd.Refuse), Measured([(1, 2), (5, 8)], CurveInterpolation.Linear, CurveEnd.LastChord));
        Assert.Equal(0.7, PowerLawLoss.InSoil(TimeExponent.FromValue(0.7)).Exponent.Value);
    }

    private static MeasuredLoss Measured((double Years, double Um)[] points, CurveInterpolation interpolation, CurveEnd end) => new(
        new ValueList<LossPoint>(points.Select(static point => new LossPoint(Duration.FromYears365(point.Years), Length.FromMicrometers(point.Um))).ToArray()),
        interpolation,
        end,
        Basis.OwnExperience("invented"));
}
