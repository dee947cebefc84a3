using SacrificialTape.Provenance;

namespace SacrificialTape.SiteConditions;

/// <summary>Humidity and dew point, in doubles: degC, hPa, % of relative humidity.</summary>
internal static class DewPointKernel
{
    /// <summary>e_s = e0 exp(a T/(b + T)).</summary>
    internal static double SaturationHpa<TSteps>(double airC, double e0Hpa, double a, double bC, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double saturation = e0Hpa * Math.Exp(a * airC / (bC + airC));
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.Saturation, [e0Hpa, a, bC, airC], saturation);
        }

        return saturation;
    }

    /// <summary>e = U/100 e_s.</summary>
    internal static double VapourHpa<TSteps>(double percent, double saturationHpa, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double vapour = percent / 100 * saturationHpa;
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.VapourPressure, [percent, saturationHpa], vapour);
        }

        return vapour;
    }

    /// <summary>T_d = b g/(a - g) with g = ln(U/100) + a T/(b + T).</summary>
    internal static double DewPointC<TSteps>(double airC, double percent, double a, double bC, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double gamma = Math.Log(percent / 100) + (a * airC / (bC + airC));
        double dewPoint = bC * gamma / (a - gamma);
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.Gamma, [percent, a, bC, airC], gamma);
            steps.Add(DewPointFormulas.DewPoint, [bC, gamma, a], dewPoint);
        }

        return dewPoint;
    }

    /// <summary>U = 100 e_s(T_d)/e_s(T): e0 falls out.</summary>
    internal static double PercentFromDewPoint<TSteps>(double airC, double dewPointC, double a, double bC, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double percent = 100 * Math.Exp((a * dewPointC / (bC + dewPointC)) - (a * airC / (bC + airC)));
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.HumidityFromDewPoint, [a, bC, dewPointC, airC], percent);
        }

        return percent;
    }

    /// <summary>e = e_w - A p (T - T_w).</summary>
    internal static double PsychrometricHpa<TSteps>(double wetSaturationHpa, double perKelvin, double pressureHpa, double airC, double wetC, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double vapour = wetSaturationHpa - (perKelvin * pressureHpa * (airC - wetC));
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.Psychrometric, [wetSaturationHpa, perKelvin, pressureHpa, airC, wetC], vapour);
        }

        return vapour;
    }

    /// <summary>U = 100 e/e_s.</summary>
    internal static double PercentFromPressures<TSteps>(double vapourHpa, double saturationHpa, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double percent = 100 * vapourHpa / saturationHpa;
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.HumidityFromPressures, [vapourHpa, saturationHpa], percent);
        }

        return percent;
    }

    /// <summary>m = T_s - T_d.</summary>
    internal static double MarginK<TSteps>(double surfaceC, double dewPointC, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double margin = surfaceC - dewPointC;
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.Margin, [surfaceC, dewPointC], margin);
        }

        return margin;
    }

    /// <summary>T_min = T_d + m.</summary>
    internal static double LeastSurfaceC<TSteps>(double dewPointC, double marginK, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = dewPointC + marginK;
        if (TSteps.Records)
        {
            steps.Add(DewPointFormulas.LeastSurface, [dewPointC, marginK], least);
        }

        return least;
    }
}
