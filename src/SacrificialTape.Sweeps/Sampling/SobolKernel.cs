using System.Numerics;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>
/// A scrambled Sobol sequence, any point alone. Scramble: each column of a dimension is multiplied by a random lower triangular
/// matrix of binary digits, and a random shift is added digit by digit (J. Matousek, "On the L2-discrepancy for anchored boxes",
/// J. Complexity 14 (1998) 527-556; recalled, check before use). A point keeps 52 binary digits.
/// </summary>
internal static class SobolKernel
{
    /// <summary>Binary digits of a share.</summary>
    internal const int Digits = 52;

    /// <summary>Scrambled columns of a dimension, the first digit highest of 52 bits; the shift comes last.</summary>
    internal static ulong[] Scrambled(ulong seed, int dimension)
    {
        uint[] plain = DirectionNumbers.Of(dimension);
        ulong[] rows = new ulong[Digits];
        for (int i = 0; i < Digits; i++)
        {
            // Digit i of the result takes itself and a random choice of the digits before it.
            ulong random = PhiloxKernel.Words(seed, PhiloxKernel.Purpose.Scramble, (uint)dimension, (ulong)i).First;
            ulong self = 1UL << (Digits - 1 - i);
            ulong before = ~((self << 1) - 1) & ((1UL << Digits) - 1);
            rows[i] = self | (random & before);
        }

        ulong[] columns = new ulong[plain.Length + 1];
        for (int k = 0; k < plain.Length; k++)
        {
            ulong digits = (ulong)plain[k] << (Digits - 32);
            for (int i = 0; i < Digits; i++)
            {
                ulong parity = (ulong)BitOperations.PopCount(rows[i] & digits) & 1;
                columns[k] |= parity << (Digits - 1 - i);
            }
        }

        columns[^1] = PhiloxKernel.Words(seed, PhiloxKernel.Purpose.Shift, (uint)dimension, 0).First >> (64 - Digits);
        return columns;
    }

    /// <summary>The digits of a point.</summary>
    internal static ulong Point(ReadOnlySpan<ulong> columns, ulong index)
    {
        ulong digits = columns[^1];
        for (; index != 0; index &= index - 1)
        {
            digits ^= columns[BitOperations.TrailingZeroCount(index)];
        }

        return digits;
    }

    internal static double Share(ulong digits) => (digits + 0.5) * (1.0 / (1UL << Digits));
}
