using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Runs a formula over all rows in the widest vectors that the machine has.</summary>
internal static class RowLoop
{
    internal static void Run<TFormula>(scoped in TFormula batch, int rows)
        where TFormula : struct, IRowFormula<TFormula>, allows ref struct
    {
        if (Vector512.IsHardwareAccelerated)
        {
            Run<TFormula, EightLanes>(batch, rows);
        }
        else if (Vector256.IsHardwareAccelerated)
        {
            Run<TFormula, FourLanes>(batch, rows);
        }
        else
        {
            Run<TFormula, TwoLanes>(batch, rows);
        }
    }

    /// <summary>Runs a formula whose answers go where its inputs stood.</summary>
    internal static void InPlace<TFormula>(scoped in TFormula batch, int rows)
        where TFormula : struct, IRowFormula<TFormula>, allows ref struct
    {
        if (Vector512.IsHardwareAccelerated)
        {
            InPlace<TFormula, EightLanes>(batch, rows);
        }
        else if (Vector256.IsHardwareAccelerated)
        {
            InPlace<TFormula, FourLanes>(batch, rows);
        }
        else
        {
            InPlace<TFormula, TwoLanes>(batch, rows);
        }
    }

    /// <summary>The same in vectors of a stated width. No row may be worked out twice here, so the rest goes one by one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void InPlace<TFormula, TLanes>(scoped in TFormula batch, int rows)
        where TFormula : struct, IRowFormula<TFormula>, allows ref struct
        where TLanes : struct, ILanes<TLanes>
    {
        int row = 0;
        for (; row <= rows - TLanes.Count; row += TLanes.Count)
        {
            TFormula.Work<TLanes, EveryLane>(batch, (nuint)row);
        }

        for (; row < rows; row++)
        {
            TFormula.Work<TLanes, FirstLane>(batch, (nuint)row);
        }
    }

    /// <summary>In vectors of a stated width.</summary>
    /// <remarks>Compiled in full at the first call: in steps the compiler settled for code that took up to three times as long.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Run<TFormula, TLanes>(scoped in TFormula batch, int rows)
        where TFormula : struct, IRowFormula<TFormula>, allows ref struct
        where TLanes : struct, ILanes<TLanes>
    {
        int row = 0;
        for (; row <= rows - TLanes.Count; row += TLanes.Count)
        {
            TFormula.Work<TLanes, EveryLane>(batch, (nuint)row);
        }

        if (row == rows)
        {
            return;
        }

        // Inputs and destination are apart, so the last full vector may reach back over rows already done.
        if (rows >= TLanes.Count)
        {
            TFormula.Work<TLanes, EveryLane>(batch, (nuint)(rows - TLanes.Count));
            return;
        }

        for (; row < rows; row++)
        {
            TFormula.Work<TLanes, FirstLane>(batch, (nuint)row);
        }
    }
}
