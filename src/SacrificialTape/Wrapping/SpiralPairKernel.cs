using SacrificialTape.Provenance;

namespace SacrificialTape.Wrapping;

/// <summary>Two spirals on one another.</summary>
internal static class SpiralPairKernel
{
    internal static int Layers<TSteps>(int first, int second, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        int layers = first + second;
        if (TSteps.Records)
        {
            steps.Add(SpiralPairFormulas.Layers, [first, second], layers);
        }

        return layers;
    }
}
