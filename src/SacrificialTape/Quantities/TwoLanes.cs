using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace SacrificialTape.Quantities;

/// <summary>Two doubles in a vector of 128 bits.</summary>
internal readonly struct TwoLanes : ILanes<TwoLanes>
{
    private readonly Vector128<double> lanes;

    private TwoLanes(Vector128<double> lanes) => this.lanes = lanes;

    public static int Count => Vector128<double>.Count;

    public double First => this.lanes.ToScalar();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator TwoLanes(double value) => new(Vector128.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator +(TwoLanes left, TwoLanes right) => new(left.lanes + right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator -(TwoLanes left, TwoLanes right) => new(left.lanes - right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator *(TwoLanes left, TwoLanes right) => new(left.lanes * right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator /(TwoLanes left, TwoLanes right) => new(left.lanes / right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator <(TwoLanes left, TwoLanes right) => new(Vector128.LessThan(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator >(TwoLanes left, TwoLanes right) => new(Vector128.GreaterThan(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator <=(TwoLanes left, TwoLanes right) => new(Vector128.LessThanOrEqual(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator >=(TwoLanes left, TwoLanes right) => new(Vector128.GreaterThanOrEqual(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator &(TwoLanes left, TwoLanes right) => new(left.lanes & right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes operator |(TwoLanes left, TwoLanes right) => new(left.lanes | right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Load(ref readonly double source, nuint offset) => new(Vector128.LoadUnsafe(in source, offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double destination, nuint offset) => this.lanes.StoreUnsafe(ref destination, offset);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Same(TwoLanes left, TwoLanes right) => new(Vector128.Equals(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Where(TwoLanes mask, TwoLanes holds, TwoLanes otherwise) =>
        new(Vector128.ConditionalSelect(mask.lanes, holds.lanes, otherwise.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(TwoLanes mask) => Vector128.ExtractMostSignificantBits(mask.lanes) != 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Min(TwoLanes left, TwoLanes right) => new(Vector128.Min(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Max(TwoLanes left, TwoLanes right) => new(Vector128.Max(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Abs(TwoLanes value) => new(Vector128.Abs(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Sqrt(TwoLanes value) => new(Vector128.Sqrt(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Exp(TwoLanes value) => new(Vector128.Exp(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TwoLanes Log(TwoLanes value) => new(Vector128.Log(value.lanes));

    public static TwoLanes Atan(TwoLanes value)
    {
        Span<double> each = stackalloc double[Count];
        for (int i = 0; i < each.Length; i++)
        {
            each[i] = Math.Atan(value.lanes[i]);
        }

        return new(Vector128.Create<double>(each));
    }
}
