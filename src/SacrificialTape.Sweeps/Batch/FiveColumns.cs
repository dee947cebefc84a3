using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Rows of a formula of up to five columns.</summary>
internal readonly ref struct FiveColumns<TFormula>(Column one, Column two, Column three, Column four, Column five, Span<double> answers)
    : IRowFormula<FiveColumns<TFormula>>
    where TFormula : struct, IFiveColumns
{
    private readonly Column one = one;
    private readonly Column two = two;
    private readonly Column three = three;
    private readonly Column four = four;
    private readonly Column five = five;
    private readonly Span<double> answers = answers;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Work<TLanes, TAccess>(scoped in FiveColumns<TFormula> batch, nuint row)
        where TLanes : struct, ILanes<TLanes>
        where TAccess : struct, IRowAccess => TAccess.Store(
            TFormula.Of(
                batch.one.At<TLanes, TAccess>(row),
                batch.two.At<TLanes, TAccess>(row),
                batch.three.At<TLanes, TAccess>(row),
                batch.four.At<TLanes, TAccess>(row),
                batch.five.At<TLanes, TAccess>(row)),
            ref MemoryMarshal.GetReference(batch.answers),
            row);
}
