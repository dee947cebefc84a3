using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>A formula of up to five columns with one answer; a column that it does not need is any number.</summary>
internal interface IFiveColumns
{
    static abstract TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
        where TLanes : struct, ILanes<TLanes>;
}
