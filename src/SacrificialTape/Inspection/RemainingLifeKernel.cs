using SacrificialTape.Provenance;

namespace SacrificialTape.Inspection;

/// <summary>Rates and remaining lives in um, um/a and years. A life that rests on no loss is not a number: undetermined.</summary>
internal static class RemainingLifeKernel
{
    internal static double LongTermUm<TSteps>(double suppliedUm, double nowUm, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = (suppliedUm - nowUm) / years;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.LongTerm, [suppliedUm, nowUm, years], rate);
        }

        return rate;
    }

    internal static double ShortTermUm<TSteps>(double beforeUm, double nowUm, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = (beforeUm - nowUm) / years;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.ShortTerm, [beforeUm, nowUm, years], rate);
        }

        return rate;
    }

    /// <summary>(t_a - t_r)/r; none is left at or below the thickness required; not a number at no rate or less.</summary>
    internal static double ByRate<TSteps>(double nowUm, double requiredUm, double rateUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (nowUm <= requiredUm)
        {
            return 0;
        }

        if (!(rateUm > 0))
        {
            return double.NaN;
        }

        double years = (nowUm - requiredUm) / rateUm;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.ByRate, [nowUm, requiredUm, rateUm], years);
        }

        return years;
    }

    internal static double PerforationLimitUm(double usable, double foilUm) => (1 - usable) * foilUm;

    /// <summary>t s / sqrt(n), two-sided.</summary>
    internal static double HalfWidthUm<TSteps>(double confidence, double deviationUm, int count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double t = NoncentralTKernel.StudentUpper((1 - confidence) / 2, count - 1);
        double half = t * deviationUm / Math.Sqrt(count);
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.HalfWidth, [t, deviationUm, count], half);
        }

        return half;
    }

    internal static double LostUm<TSteps>(double suppliedUm, double nowUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lost = suppliedUm - nowUm;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.Lost, [suppliedUm, nowUm], lost);
        }

        return lost;
    }

    internal static double RefittedRateUm<TSteps>(double lostUm, double lawYears, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = lostUm / lawYears;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.RefittedRate, [lostUm, lawYears], rate);
        }

        return rate;
    }

    internal static double AfterAge<TSteps>(double allYears, double ageYears, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double left = allYears - ageYears;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.AfterAge, [allYears, ageYears], left);
        }

        return left;
    }

    /// <summary>Loss between two inspections, least and most: Welch's interval.</summary>
    internal static (double Least, double Most) LossBetweenUm<TSteps>(
        (double Mean, double Deviation, int Count) before, (double Mean, double Deviation, int Count) now, double confidence, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double first = before.Deviation * before.Deviation / before.Count;
        double second = now.Deviation * now.Deviation / now.Count;
        double loss = before.Mean - now.Mean;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.LostBetween, [before.Mean, now.Mean], loss);
        }

        double error = Math.Sqrt(first + second);
        if (error == 0)
        {
            return (loss, loss);
        }

        double freedom = (first + second) * (first + second) / ((first * first / (before.Count - 1)) + (second * second / (now.Count - 1)));
        double t = NoncentralTKernel.StudentUpper((1 - confidence) / 2, freedom);
        double most = loss + (t * error);
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.WelchError, [before.Deviation, before.Count, now.Deviation, now.Count], error);
            steps.Add(RemainingLifeFormulas.WelchFreedom, [error, before.Deviation, before.Count, now.Deviation, now.Count], freedom);
            steps.Add(RemainingLifeFormulas.LossBound, [loss, t, error], most);
        }

        return (loss - (t * error), most);
    }

    internal static double NextInspection<TSteps>(double share, double remainingYears, double mostYears, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double years = Math.Min(share * remainingYears, mostYears);
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.NextInspection, [share, remainingYears, mostYears], years);
        }

        return years;
    }

    internal static double PredictionRatio<TSteps>(double measuredUm, double predictedUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ratio = measuredUm / predictedUm;
        if (TSteps.Records)
        {
            steps.Add(RemainingLifeFormulas.PredictionRatio, [measuredUm, predictedUm], ratio);
        }

        return ratio;
    }
}
