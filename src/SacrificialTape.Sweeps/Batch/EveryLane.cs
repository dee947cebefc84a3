using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>As many rows at once as there are lanes.</summary>
internal readonly struct EveryLane : IRowAccess
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLanes Load<TLanes>(ref readonly double rows, nuint row)
        where TLanes : struct, ILanes<TLanes> => TLanes.Load(in rows, row);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store<TLanes>(TLanes value, ref double rows, nuint row)
        where TLanes : struct, ILanes<TLanes> => value.Store(ref rows, row);
}
