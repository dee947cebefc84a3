using System.Buffers.Binary;
using System.Numerics;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// A sum of doubles, or of products of two, without any rounding: all binary digits that a product can have are kept. So the
/// order in which terms come, and sums are joined, cannot change a bit of what is made of it.
/// </summary>
/// <remarks>After U. Kulisch's long accumulator (recalled). Terms must be finite.</remarks>
internal sealed class ExactSum
{
    // The last digit that a product of two of the smallest doubles can have stands for 2^-2148.
    internal const int LeastExponent = -2148;

    private const int LimbBits = 32;
    private const int Limbs = 140;
    private const int MostTermsUncarried = 1 << 29;

    private readonly long[] limbs = new long[Limbs];
    private int uncarried;

    internal void Add(double value)
    {
        (long mantissa, int exponent) = Parts(value);
        this.Put((UInt128)(ulong)Math.Abs(mantissa), exponent, mantissa < 0);
    }

    /// <summary>Adds the product of two, exactly.</summary>
    internal void AddProduct(double one, double other)
    {
        (long a, int left) = Parts(one);
        (long b, int right) = Parts(other);
        this.Put((UInt128)(ulong)Math.Abs(a) * (ulong)Math.Abs(b), left + right, (a < 0) != (b < 0));
    }

    internal void Add(ExactSum other)
    {
        // Both are carried first, so that limbs stay far from their bounds.
        this.Carry();
        other.Carry();
        for (int i = 0; i < Limbs; i++)
        {
            this.limbs[i] += other.limbs[i];
        }

        this.Carry();
    }

    /// <summary>Writes the sum; carried, so that equal sums are equal bytes however they came about.</summary>
    internal void Write(BinaryWriter writer)
    {
        this.Carry();
        for (int i = 0; i < Limbs - 1; i++)
        {
            writer.Write((uint)this.limbs[i]);
        }

        writer.Write(this.limbs[^1]);
    }

    /// <summary>Takes a written sum in place of this one.</summary>
    internal void Read(BinaryReader reader)
    {
        for (int i = 0; i < Limbs - 1; i++)
        {
            this.limbs[i] = reader.ReadUInt32();
        }

        this.limbs[^1] = reader.ReadInt64();
        this.uncarried = 0;
    }

    /// <summary>The sum as a whole number of 2^-2148.</summary>
    internal BigInteger Whole()
    {
        this.Carry();

        // Carried, all limbs but the last are digits of 32 bits, and the last one has the sign.
        Span<byte> bytes = stackalloc byte[(4 * (Limbs - 1)) + 8];
        for (int i = 0; i < Limbs - 1; i++)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(bytes[(4 * i)..], (uint)this.limbs[i]);
        }

        BinaryPrimitives.WriteInt64LittleEndian(bytes[(4 * (Limbs - 1))..], this.limbs[^1]);
        return new BigInteger(bytes);
    }

    /// <summary>A ratio of whole numbers times a power of two, as a double; at most one unit in the last place off.</summary>
    internal static double Ratio(BigInteger above, BigInteger below, int exponent)
    {
        if (above.IsZero)
        {
            return 0;
        }

        // 96 bits of quotient are enough to round 53.
        int shift = 96 - (int)(above.GetBitLength() - below.GetBitLength());
        BigInteger quotient = shift >= 0 ? (above << shift) / below : above / (below << -shift);
        return Math.ScaleB((double)quotient, exponent - shift);
    }

    private static (long Mantissa, int Exponent) Parts(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        int exponent = (int)((bits >> 52) & 0x7FF);
        long mantissa = bits & 0xF_FFFF_FFFF_FFFF;
        (mantissa, exponent) = exponent == 0 ? (mantissa, -1074) : (mantissa | (1L << 52), exponent - 1075);
        return (bits < 0 ? -mantissa : mantissa, exponent);
    }

    private void Put(UInt128 digits, int exponent, bool negative)
    {
        int place = exponent - LeastExponent;
        int limb = place / LimbBits;
        int shift = place % LimbBits;
        UInt128 rest = digits;
        ulong first = (ulong)(uint)rest << shift;
        long sign = negative ? -1 : 1;
        this.limbs[limb] += sign * (uint)first;
        ulong over = first >> LimbBits;
        for (rest >>= LimbBits; rest != UInt128.Zero || over != 0; rest >>= LimbBits)
        {
            ulong next = ((ulong)(uint)rest << shift) | over;
            this.limbs[++limb] += sign * (uint)next;
            over = next >> LimbBits;
        }

        if (++this.uncarried >= MostTermsUncarried)
        {
            this.Carry();
        }
    }

    // Every limb but the last becomes 0 to 2^32 - 1.
    private void Carry()
    {
        long carry = 0;
        for (int i = 0; i < Limbs - 1; i++)
        {
            long limb = this.limbs[i] + carry;
            carry = limb >> LimbBits;
            this.limbs[i] = limb & uint.MaxValue;
        }

        this.limbs[^1] += carry;
        this.uncarried = 0;
    }
}
