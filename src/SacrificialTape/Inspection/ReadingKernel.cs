using SacrificialTape.Provenance;

namespace SacrificialTape.Inspection;

/// <summary>Readings in um: thickness of one foil, mean, scatter, and the test for outliers.</summary>
internal static class ReadingKernel
{
    /// <summary>m / j - a, um: layers measured together, with what was left on each.</summary>
    internal static double OneFoilUm<TSteps>(double togetherUm, int layers, double leftOnUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double thickness = (togetherUm / layers) - leftOnUm;
        if (TSteps.Records)
        {
            steps.Add(ReadingFormulas.OneFoil, [togetherUm, layers, leftOnUm], thickness);
        }

        return thickness;
    }

    /// <summary>1e7 m / (rho A j), um from g, kg/m3 and cm2.</summary>
    internal static double WeighedUm<TSteps>(double grams, double kilogramsPerM3, double squareCm, int layers, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double thickness = 1e7 * grams / (kilogramsPerM3 * squareCm * layers);
        if (TSteps.Records)
        {
            steps.Add(ReadingFormulas.Weighed, [grams, kilogramsPerM3, squareCm, layers], thickness);
        }

        return thickness;
    }

    internal static double MeanUm<TSteps>(ReadOnlySpan<double> um, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double sum = 0;
        foreach (double value in um)
        {
            sum += value;
        }

        double mean = sum / um.Length;
        if (TSteps.Records)
        {
            steps.Add(ReadingFormulas.Mean, [sum, um.Length], mean);
        }

        return mean;
    }

    internal static double DeviationUm<TSteps>(ReadOnlySpan<double> um, double mean, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double squares = 0;
        foreach (double value in um)
        {
            squares += (value - mean) * (value - mean);
        }

        double deviation = Math.Sqrt(squares / (um.Length - 1));
        if (TSteps.Records)
        {
            // A sum of squares has no unit of the trade: it is shown as a number, of um2.
            steps.Add(ReadingFormulas.Deviation, [squares, um.Length], deviation);
        }

        return deviation;
    }

    /// <summary>How far the farthest reading may lie from the mean, in standard deviations; at least 3 readings.</summary>
    internal static double Critical<TSteps>(int count, double significance, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double t = NoncentralTKernel.StudentUpper(significance / (2 * count), count - 2);
        double critical = (count - 1) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2 + (t * t)));
        if (TSteps.Records)
        {
            steps.Add(ReadingFormulas.Critical, [count, t], critical);
        }

        return critical;
    }

    /// <summary>|x - mean| / s.</summary>
    internal static double Distance<TSteps>(double um, double meanUm, double deviationUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double distance = Math.Abs(um - meanUm) / deviationUm;
        if (TSteps.Records)
        {
            steps.Add(ReadingFormulas.Distance, [um, meanUm, deviationUm], distance);
        }

        return distance;
    }
}
