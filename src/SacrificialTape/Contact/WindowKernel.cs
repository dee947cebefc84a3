using SacrificialTape.Provenance;

namespace SacrificialTape.Contact;

/// <summary>Bare area of one window, cm2 from mm.</summary>
internal static class WindowKernel
{
    internal static double RectangleCm2<TSteps>(double alongMm, double aroundMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = alongMm * aroundMm / 100;
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.RectangularWindow, [alongMm, aroundMm], area);
        }

        return area;
    }

    internal static double DiscCm2<TSteps>(double diameterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = Math.PI / 4 * diameterMm * diameterMm / 100;
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.RoundWindow, [diameterMm], area);
        }

        return area;
    }
}
