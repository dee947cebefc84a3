using System.Globalization;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Sampling;

/// <summary>The generators against the numbers that were published with them.</summary>
public sealed class PublishedNumbers
{
    // Random123, tests/kat_vectors, lines "philox4x32 10": counter, key, answer. Read second hand, in three copies that agree.
    [Theory]
    [InlineData("00000000 00000000 00000000 00000000 00000000 00000000", "6627e8d5 e169c58d bc57ac4c 9b00dbd8")]
    [InlineData("ffffffff ffffffff ffffffff ffffffff ffffffff ffffffff", "408f276d 41c83b0e a20bc7c6 6d5451fd")]
    [InlineData("243f6a88 85a308d3 13198a2e 03707344 a4093822 299f31d0", "d16cfe09 94fdcceb 5001e420 24126ea1")]
    public void Philox_gives_the_known_answers(string given, string answer)
    {
        uint[] words = [.. given.Split(' ').Select(Hex)];
        (uint a, uint b, uint c, uint d) = PhiloxKernel.Block(words[0], words[1], words[2], words[3], words[4], words[5]);
        Assert.Equal(answer.Split(' ').Select(Hex), [a, b, c, d]);
    }

    // What the program of Joe and Kuo prints for 10 points in 3 dimensions, and for points 119 to 123 in 27; read second hand,
    // the former in two copies that agree. Its order is that of the Gray code.
    [Theory]
    [InlineData(0, "0 0 0")]
    [InlineData(1, "0.5 0.5 0.5")]
    [InlineData(2, "0.75 0.25 0.25")]
    [InlineData(3, "0.25 0.75 0.75")]
    [InlineData(4, "0.375 0.375 0.625")]
    [InlineData(5, "0.875 0.875 0.125")]
    [InlineData(6, "0.625 0.125 0.875")]
    [InlineData(7, "0.125 0.625 0.375")]
    [InlineData(8, "0.1875 0.3125 0.9375")]
    [InlineData(9, "0.6875 0.8125 0.4375")]
    [InlineData(118, "0.6953125 0.4765625 0.9921875 0.3203125 0.4140625 0.5234375 0.8046875 0.3828125 0.1015625 0.3515625 0.6796875 0.0234375 0.5703125 0.1953125 0.7890625 0.2109375 0.6484375 0.3984375 0.8671875 0.1171875 0.2265625 0.3046875 0.8515625 0.6484375 0.8046875 0.9140625 0.6015625")]
    [InlineData(121, "0.6328125 0.5390625 0.4296875 0.0078125 0.8515625 0.7109375 0.1171875 0.1953125 0.2890625 0.9140625 0.7421875 0.2109375 0.7578125 0.6328125 0.2265625 0.8984375 0.3359375 0.5859375 0.5546875 0.6796875 0.9140625 0.6171875 0.2890625 0.4609375 0.6171875 0.3515625 0.6640625")]
    [InlineData(122, "0.8828125 0.2890625 0.6796875 0.7578125 0.6015625 0.9609375 0.8671875 0.4453125 0.0390625 0.6640625 0.9921875 0.4609375 0.0078125 0.3828125 0.4765625 0.1484375 0.0859375 0.3359375 0.8046875 0.4296875 0.1640625 0.8671875 0.5390625 0.7109375 0.3671875 0.1015625 0.4140625")]
    public void The_plain_Sobol_sequence_is_the_published_one(int point, string answer)
    {
        double[] expected = [.. answer.Split(' ').Select(static text => double.Parse(text, CultureInfo.InvariantCulture))];
        int gray = point ^ (point >> 1);
        for (int dimension = 0; dimension < expected.Length; dimension++)
        {
            ulong[] columns = [.. DirectionNumbers.Of(dimension).Select(static column => (ulong)column << 20), 0];
            Assert.Equal(expected[dimension], SobolKernel.Point(columns, (ulong)gray) / (double)(1UL << SobolKernel.Digits));
        }
    }

    private static uint Hex(string text) => uint.Parse(text, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
