using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Shares that become values of a normal distribution where they stand.</summary>
internal readonly ref struct NormalDraws(Span<double> shares, double mean, double deviation) : IRowFormula<NormalDraws>
{
    private readonly Span<double> shares = shares;
    private readonly double mean = mean;
    private readonly double deviation = deviation;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Work<TLanes, TAccess>(scoped in NormalDraws batch, nuint row)
        where TLanes : struct, ILanes<TLanes>
        where TAccess : struct, IRowAccess
    {
        ref double first = ref MemoryMarshal.GetReference(batch.shares);
        TLanes z = NormalKernel.Quantile(TAccess.Load<TLanes>(ref first, row));
        TAccess.Store(batch.mean + (batch.deviation * z), ref first, row);
    }
}
