using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Shares that become values of a log-normal distribution where they stand.</summary>
internal readonly ref struct LogNormalDraws(Span<double> shares, double median, double logDeviation) : IRowFormula<LogNormalDraws>
{
    private readonly Span<double> shares = shares;
    private readonly double median = median;
    private readonly double logDeviation = logDeviation;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Work<TLanes, TAccess>(scoped in LogNormalDraws batch, nuint row)
        where TLanes : struct, ILanes<TLanes>
        where TAccess : struct, IRowAccess
    {
        ref double first = ref MemoryMarshal.GetReference(batch.shares);
        TLanes z = NormalKernel.Quantile(TAccess.Load<TLanes>(ref first, row));
        TAccess.Store(batch.median * TLanes.Exp(batch.logDeviation * z), ref first, row);
    }
}
