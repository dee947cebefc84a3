using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace SacrificialTape.Quantities;

/// <summary>Four doubles in a vector of 256 bits.</summary>
internal readonly struct FourLanes : ILanes<FourLanes>
{
    private readonly Vector256<double> lanes;

    private FourLanes(Vector256<double> lanes) => this.lanes = lanes;

    public static int Count => Vector256<double>.Count;

    public double First => this.lanes.ToScalar();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator FourLanes(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator +(FourLanes left, FourLanes right) => new(left.lanes + right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator -(FourLanes left, FourLanes right) => new(left.lanes - right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator *(FourLanes left, FourLanes right) => new(left.lanes * right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator /(FourLanes left, FourLanes right) => new(left.lanes / right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator <(FourLanes left, FourLanes right) => new(Vector256.LessThan(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator >(FourLanes left, FourLanes right) => new(Vector256.GreaterThan(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator <=(FourLanes left, FourLanes right) => new(Vector256.LessThanOrEqual(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator >=(FourLanes left, FourLanes right) => new(Vector256.GreaterThanOrEqual(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator &(FourLanes left, FourLanes right) => new(left.lanes & right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator |(FourLanes left, FourLanes right) => new(left.lanes | right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Load(ref readonly double source, nuint offset) => new(Vector256.LoadUnsafe(in source, offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double destination, nuint offset) => this.lanes.StoreUnsafe(ref destination, offset);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Same(FourLanes left, FourLanes right) => new(Vector256.Equals(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Where(FourLanes mask, FourLanes holds, FourLanes otherwise) =>
        new(Vector256.ConditionalSelect(mask.lanes, holds.lanes, otherwise.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(FourLanes mask) => Vector256.ExtractMostSignificantBits(mask.lanes) != 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Min(FourLanes left, FourLanes right) => new(Vector256.Min(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Max(FourLanes left, FourLanes right) => new(Vector256.Max(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Abs(FourLanes value) => new(Vector256.Abs(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Sqrt(FourLanes value) => new(Vector256.Sqrt(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Exp(FourLanes value) => new(Vector256.Exp(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Log(FourLanes value) => new(Vector256.Log(value.lanes));

    public static FourLanes Atan(FourLanes value)
    {
        Span<double> each = stackalloc double[Count];
        for (int i = 0; i < each.Length; i++)
        {
            each[i] = Math.Atan(value.lanes[i]);
        }

        return new(Vector256.Create<double>(each));
    }
}
