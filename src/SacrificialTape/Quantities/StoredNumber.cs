using System.Globalization;

namespace SacrificialTape.Quantities;

/// <summary>
/// Eight bytes that hold a canonical number and know when they were never set. The bits are stored against those of
/// NaN, so that the all-zero bits of a <c>default</c> value read as "unset" while zero itself stays a legal number.
/// </summary>
internal readonly struct StoredNumber : IEquatable<StoredNumber>
{
    private const ulong UnsetBits = 0x7FF8_0000_0000_0000;

    private readonly ulong bits;

    internal StoredNumber(double value) => this.bits = BitConverter.DoubleToUInt64Bits(value) ^ UnsetBits;

    internal bool IsSet => this.bits != 0;

    /// <summary>The number as it was given; throws when the value around it is <c>default</c>.</summary>
    internal double Read(string typeName) => this.bits == 0 ? throw Unset(typeName) : this.Bare;

    /// <summary>The number without the check, for owners that cannot be <c>default</c>.</summary>
    internal double Bare => BitConverter.UInt64BitsToDouble(this.bits ^ UnsetBits);

    public bool Equals(StoredNumber other) =>
        this.bits == other.bits || (this.IsSet && other.IsSet && Key(this.Bare) == Key(other.Bare));

    public override bool Equals(object? obj) => obj is StoredNumber other && this.Equals(other);

    public override int GetHashCode() => this.IsSet ? Key(this.Bare).GetHashCode() : 0;

    /// <summary>
    /// The number cut to 15 significant decimal digits: the most that every double holds, hence the finest grid on
    /// which 1 m, 100 cm and 1000 mm are always one value. Equality, hash codes and fingerprints all use this key.
    /// </summary>
    internal static double Key(double value)
    {
        if (value == 0)
        {
            return 0; // one zero, whatever its sign
        }

        Span<char> text = stackalloc char[32];
        return value.TryFormat(text, out int written, "E14", CultureInfo.InvariantCulture)
            ? double.Parse(text[..written], NumberStyles.Float, CultureInfo.InvariantCulture)
            : throw new InvalidOperationException("A double in E14 form never needs more than 32 characters.");
    }

    private static InvalidOperationException Unset(string typeName) =>
        new($"This {typeName} is unset: it is a default value that no constructor or factory has filled.");
}
