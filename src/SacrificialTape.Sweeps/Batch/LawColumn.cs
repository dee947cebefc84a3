using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>The exponents of power laws; one exponent for all rows has its knee worked out once.</summary>
internal readonly ref struct LawColumn
{
    private readonly Column exponent;
    private readonly PowerLawLanes<TwoLanes> single;

    internal LawColumn(Column exponent)
    {
        this.exponent = exponent;
        this.single = exponent.IsSingle ? new PowerLawLanes<TwoLanes>(exponent[0]) : default;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal PowerLawLanes<TLanes> At<TLanes, TAccess>(nuint row)
        where TLanes : struct, ILanes<TLanes>
        where TAccess : struct, IRowAccess => this.exponent.IsSingle
            ? PowerLawLanes<TLanes>.Spread(this.single)
            : new(this.exponent.At<TLanes, TAccess>(row));
}
