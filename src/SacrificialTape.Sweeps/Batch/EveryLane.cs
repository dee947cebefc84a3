using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>As many rows at once as there are lanes.</summary>
internal readonly struct EveryLane : IRowAccess
{
    public static TLanes Load<TLanes>(ref readonly double rows, nuint row)
        where TLanes : struct, ILanes<TLanes> => TLanes.Load(in rows, row);

    public static void Store<TLanes>(TLanes value, ref double rows, nuint row)
        where TLanes : struct, ILanes<TLanes> => value.Store(ref rows, row);
}
