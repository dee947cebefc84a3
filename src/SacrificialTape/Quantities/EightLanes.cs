using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace SacrificialTape.Quantities;

/// <summary>Eight doubles in a vector of 512 bits.</summary>
internal readonly struct EightLanes : ILanes<EightLanes>
{
    private readonly Vector512<double> lanes;

    private EightLanes(Vector512<double> lanes) => this.lanes = lanes;

    public static int Count => Vector512<double>.Count;

    public double First => this.lanes.ToScalar();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator EightLanes(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator +(EightLanes left, EightLanes right) => new(left.lanes + right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator -(EightLanes left, EightLanes right) => new(left.lanes - right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator *(EightLanes left, EightLanes right) => new(left.lanes * right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator /(EightLanes left, EightLanes right) => new(left.lanes / right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator <(EightLanes left, EightLanes right) => new(Vector512.LessThan(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator >(EightLanes left, EightLanes right) => new(Vector512.GreaterThan(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator <=(EightLanes left, EightLanes right) => new(Vector512.LessThanOrEqual(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator >=(EightLanes left, EightLanes right) => new(Vector512.GreaterThanOrEqual(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator &(EightLanes left, EightLanes right) => new(left.lanes & right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator |(EightLanes left, EightLanes right) => new(left.lanes | right.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Load(ref readonly double source, nuint offset) => new(Vector512.LoadUnsafe(in source, offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double destination, nuint offset) => this.lanes.StoreUnsafe(ref destination, offset);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Same(EightLanes left, EightLanes right) => new(Vector512.Equals(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Where(EightLanes mask, EightLanes holds, EightLanes otherwise) =>
        new(Vector512.ConditionalSelect(mask.lanes, holds.lanes, otherwise.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(EightLanes mask) => Vector512.ExtractMostSignificantBits(mask.lanes) != 0;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Min(EightLanes left, EightLanes right) => new(Vector512.Min(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Max(EightLanes left, EightLanes right) => new(Vector512.Max(left.lanes, right.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Abs(EightLanes value) => new(Vector512.Abs(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Sqrt(EightLanes value) => new(Vector512.Sqrt(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Exp(EightLanes value) => new(Vector512.Exp(value.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Log(EightLanes value) => new(Vector512.Log(value.lanes));

    public static EightLanes Atan(EightLanes value)
    {
        Span<double> each = stackalloc double[Count];
        for (int i = 0; i < each.Length; i++)
        {
            each[i] = Math.Atan(value.lanes[i]);
        }

        return new(Vector512.Create<double>(each));
    }
}
