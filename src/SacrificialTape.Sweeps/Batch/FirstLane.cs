using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>
/// One row in all lanes: for what is left over. The same vector code works on it, so that a row comes out bit for bit the
/// same wherever it stands.
/// </summary>
internal readonly struct FirstLane : IRowAccess
{
    public static TLanes Load<TLanes>(ref readonly double rows, nuint row)
        where TLanes : struct, ILanes<TLanes> => Unsafe.Add(ref Unsafe.AsRef(in rows), row);

    public static void Store<TLanes>(TLanes value, ref double rows, nuint row)
        where TLanes : struct, ILanes<TLanes> => Unsafe.Add(ref rows, row) = value.First;
}
