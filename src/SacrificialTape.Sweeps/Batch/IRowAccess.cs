using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>How lanes are filled from rows and written back.</summary>
internal interface IRowAccess
{
    static abstract TLanes Load<TLanes>(ref readonly double rows, nuint row)
        where TLanes : struct, ILanes<TLanes>;

    static abstract void Store<TLanes>(TLanes value, ref double rows, nuint row)
        where TLanes : struct, ILanes<TLanes>;
}
