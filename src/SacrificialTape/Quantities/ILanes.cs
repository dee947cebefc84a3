namespace SacrificialTape.Quantities;

/// <summary>
/// Several doubles worked on at once, each in a lane of its own. Kernels write a vector form once over this, in the same
/// signs as the scalar form beside it; the width is the caller's choice. Comparisons give a mask for <see cref="Where"/>.
/// </summary>
/// <typeparam name="TSelf">The type itself.</typeparam>
internal interface ILanes<TSelf>
    where TSelf : struct, ILanes<TSelf>
{
    /// <summary>How many doubles there are.</summary>
    static abstract int Count { get; }

    /// <summary>The double of the first lane.</summary>
    double First { get; }

    static abstract implicit operator TSelf(double value);

    static abstract TSelf operator +(TSelf left, TSelf right);

    static abstract TSelf operator -(TSelf left, TSelf right);

    static abstract TSelf operator *(TSelf left, TSelf right);

    static abstract TSelf operator /(TSelf left, TSelf right);

    static abstract TSelf operator <(TSelf left, TSelf right);

    static abstract TSelf operator >(TSelf left, TSelf right);

    static abstract TSelf operator <=(TSelf left, TSelf right);

    static abstract TSelf operator >=(TSelf left, TSelf right);

    /// <summary>Both masks.</summary>
    static abstract TSelf operator &(TSelf left, TSelf right);

    /// <summary>One of the masks or both.</summary>
    static abstract TSelf operator |(TSelf left, TSelf right);

    static abstract TSelf Load(ref readonly double source, nuint offset);

    void Store(ref double destination, nuint offset);

    /// <summary>A mask of the lanes where both are the same number.</summary>
    static abstract TSelf Same(TSelf left, TSelf right);

    /// <summary>Lane by lane the one where the mask holds, else the other.</summary>
    static abstract TSelf Where(TSelf mask, TSelf holds, TSelf otherwise);

    /// <summary>Whether a mask holds in any lane.</summary>
    static abstract bool Any(TSelf mask);

    static abstract TSelf Min(TSelf left, TSelf right);

    static abstract TSelf Max(TSelf left, TSelf right);

    static abstract TSelf Abs(TSelf value);

    static abstract TSelf Sqrt(TSelf value);

    static abstract TSelf Exp(TSelf value);

    static abstract TSelf Log(TSelf value);

    /// <summary>Lane by lane by the scalar function: the platform has none for vectors.</summary>
    static abstract TSelf Atan(TSelf value);
}
