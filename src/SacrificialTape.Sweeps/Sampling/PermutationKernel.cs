using System.Numerics;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>
/// A random order of n rows of which any place can be asked for alone: a Feistel network on the least number of bits that holds
/// n, its round function Philox, walked on until the place lies below n (Black and Rogaway, "Ciphers with arbitrary finite
/// domains", CT-RSA 2002; recalled, check before use).
/// </summary>
internal static class PermutationKernel
{
    // Four rounds are enough on large halves (Luby and Rackoff); small ones are mixed longer.
    private const int FewestRounds = 4;
    private const int SomeRounds = 6;
    private const int MostRounds = 10;

    internal static long At(ulong seed, uint column, long rows, long row)
    {
        if (rows == 1)
        {
            return 0;
        }

        int bits = Math.Max(2, 64 - BitOperations.LeadingZeroCount((ulong)(rows - 1)));
        ulong place = (ulong)row;
        do
        {
            place = Once(seed, column, bits, place);
        }
        while (place >= (ulong)rows);

        return (long)place;
    }

    private static ulong Once(ulong seed, uint column, int bits, ulong place)
    {
        int low = bits / 2;
        ulong lowMask = (1UL << low) - 1;
        ulong highMask = (1UL << (bits - low)) - 1;
        ulong left = place >> low;
        ulong right = place & lowMask;
        int rounds = bits switch
        {
            <= 8 => MostRounds,
            <= 20 => SomeRounds,
            _ => FewestRounds,
        };
        for (int round = 0; round < rounds; round += 2)
        {
            left ^= Mix(seed, column, bits, round, right) & highMask;
            right ^= Mix(seed, column, bits, round + 1, left) & lowMask;
        }

        return (left << low) | right;
    }

    private static ulong Mix(ulong seed, uint column, int bits, int round, ulong half) => PhiloxKernel.Words(
        seed, PhiloxKernel.Purpose.Permutation, column, half | ((ulong)round << 48) | ((ulong)bits << 56)).First;
}
