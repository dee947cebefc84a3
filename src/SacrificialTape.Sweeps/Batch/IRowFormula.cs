using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Columns, a destination and the kernel between them; static, so that nothing is copied for a row.</summary>
/// <typeparam name="TSelf">The type itself.</typeparam>
internal interface IRowFormula<TSelf>
    where TSelf : struct, IRowFormula<TSelf>, allows ref struct
{
    /// <summary>Works out the rows from one on.</summary>
    static abstract void Work<TLanes, TAccess>(scoped in TSelf batch, nuint row)
        where TLanes : struct, ILanes<TLanes>
        where TAccess : struct, IRowAccess;
}
