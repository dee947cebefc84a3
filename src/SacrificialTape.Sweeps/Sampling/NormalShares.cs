using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Normal numbers that become the shares below them where they stand, never quite 0 nor 1.</summary>
internal readonly ref struct NormalShares(Span<double> normals) : IRowFormula<NormalShares>
{
    // Sums of normal numbers may leave the range in which a share differs from 0 and 1.
    private const double Least = 1e-300;
    private const double Most = 1 - (1.0 / (1UL << 53));

    private readonly Span<double> normals = normals;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Work<TLanes, TAccess>(scoped in NormalShares batch, nuint row)
        where TLanes : struct, ILanes<TLanes>
        where TAccess : struct, IRowAccess
    {
        ref double first = ref MemoryMarshal.GetReference(batch.normals);
        TLanes share = NormalKernel.Below(TAccess.Load<TLanes>(ref first, row));
        TAccess.Store(TLanes.Min(TLanes.Max(share, Least), Most), ref first, row);
    }
}
