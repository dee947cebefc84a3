namespace SacrificialTape.Sweeps.Sampling;

/// <summary>
/// Random numbers without state: a block of four numbers is a function of a counter and a key. Philox4x32-10 of Salmon, Moraes,
/// Dror and Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC11 (2011).
/// </summary>
internal static class PhiloxKernel
{
    private const int Rounds = 10;

    /// <summary>What a block is drawn for; different purposes never share a number.</summary>
    internal enum Purpose : uint
    {
        Share = 0,
        Permutation,
        Scramble,
        Shift,
        Trajectory,
        Group,
    }

    internal static (uint A, uint B, uint C, uint D) Block(uint a, uint b, uint c, uint d, uint key0, uint key1)
    {
        for (int round = 0; round < Rounds; round++)
        {
            ulong first = 0xD2511F53UL * a;
            ulong second = 0xCD9E8D57UL * c;
            (a, b, c, d) = ((uint)(second >> 32) ^ b ^ key0, (uint)second, (uint)(first >> 32) ^ d ^ key1, (uint)first);
            key0 += 0x9E3779B9;
            key1 += 0xBB67AE85;
        }

        return (a, b, c, d);
    }

    /// <summary>Two words of 64 bits.</summary>
    internal static (ulong First, ulong Second) Words(ulong seed, Purpose purpose, uint column, ulong index)
    {
        (uint a, uint b, uint c, uint d) = Block((uint)index, (uint)(index >> 32), column, (uint)purpose, (uint)seed, (uint)(seed >> 32));
        return (((ulong)b << 32) | a, ((ulong)d << 32) | c);
    }

    /// <summary>
    /// The middle of one of 2^52 equal parts of 0 to 1: never 0 nor 1, and 1 less it is exact too.
    /// </summary>
    internal static double Share(ulong word) => ((word >> 12) + 0.5) * (1.0 / (1UL << 52));
}
