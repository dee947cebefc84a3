using SacrificialTape.Provenance;

namespace SacrificialTape.Costing;

/// <summary>Factors of compound interest, in doubles: rate as a fraction per year, time in years, which need not be whole.</summary>
internal static class TimeValueKernel
{
    /// <summary>v = (1 + i)^-n; nothing for a time without end at a positive rate.</summary>
    internal static double SinglePayment<TSteps>(double rate, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double factor = Math.Pow(1 + rate, -years);
        if (TSteps.Records && double.IsFinite(years))
        {
            steps.Add(TimeValueFormulas.SinglePayment, [rate, years], factor);
        }

        return factor;
    }

    /// <summary>a = (1 - (1 + i)^-n) / i; n at no rate; 1 / i without end.</summary>
    internal static double Series<TSteps>(double rate, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        bool endless = double.IsPositiveInfinity(years);
        double factor = endless ? 1 / rate : rate == 0 ? years : Lost(rate, years) / rate;
        if (TSteps.Records)
        {
            if (endless)
            {
                steps.Add(TimeValueFormulas.SeriesWithoutEnd, [rate], factor);
            }
            else if (rate == 0)
            {
                steps.Add(TimeValueFormulas.SeriesAtNoRate, [years], factor);
            }
            else
            {
                steps.Add(TimeValueFormulas.SeriesPresentWorth, [rate, years], factor);
            }
        }

        return factor;
    }

    /// <summary>c = i / (1 - (1 + i)^-n); 1 / n at no rate; i without end.</summary>
    internal static double CapitalRecovery<TSteps>(double rate, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        bool endless = double.IsPositiveInfinity(years);
        double factor = endless ? rate : rate == 0 ? 1 / years : rate / Lost(rate, years);
        if (TSteps.Records)
        {
            if (endless)
            {
                steps.Add(TimeValueFormulas.RecoveryWithoutEnd, [rate], factor);
            }
            else if (rate == 0)
            {
                steps.Add(TimeValueFormulas.RecoveryAtNoRate, [years], factor);
            }
            else
            {
                steps.Add(TimeValueFormulas.CapitalRecovery, [rate, years], factor);
            }
        }

        return factor;
    }

    /// <summary>k = 1 + v + ... of m terms, v = (1 + i)^-L; m at no rate.</summary>
    internal static double Repeated<TSteps>(double rate, double times, double interval, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double factor = rate == 0 ? times : Lost(rate, times * interval) / Lost(rate, interval);
        if (TSteps.Records)
        {
            if (rate == 0)
            {
                steps.Add(TimeValueFormulas.RepeatedAtNoRate, [times], factor);
            }
            else
            {
                steps.Add(TimeValueFormulas.Repeated, [rate, times, interval], factor);
            }
        }

        return factor;
    }

    /// <summary>k = 1 / (1 - (1 + i)^-L), at a positive rate.</summary>
    internal static double RepeatedWithoutEnd<TSteps>(double rate, double interval, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double factor = 1 / Lost(rate, interval);
        if (TSteps.Records)
        {
            steps.Add(TimeValueFormulas.RepeatedWithoutEnd, [rate, interval], factor);
        }

        return factor;
    }

    /// <summary>
    /// 1 - (1 + i)^-n without the loss of digits that the plain difference has at small rates: log(1 + i) and e^x - 1 are
    /// each corrected by what rounding did to their argument.
    /// </summary>
    private static double Lost(double rate, double years)
    {
        double grown = 1 + rate;
        double logarithm = grown == 1 ? rate : Math.Log(grown) * (rate / (grown - 1));
        double exponent = -years * logarithm;
        double power = Math.Exp(exponent);
        if (power == 1)
        {
            return -exponent;
        }

        return Math.Abs(exponent) > 1 ? 1 - power : (1 - power) * (exponent / Math.Log(power));
    }
}
