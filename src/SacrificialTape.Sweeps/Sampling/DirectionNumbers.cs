using System.Globalization;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Where a Sobol sequence gets its columns: primitive polynomials and first direction numbers of 32 dimensions.</summary>
/// <remarks>
/// S. Joe and F. Y. Kuo, "Constructing Sobol sequences with better two-dimensional projections", SIAM J. Sci. Comput. 30 (2008)
/// 2635-2654, the table new-joe-kuo-6.21201, dimensions 2 to 32; read second hand in four public copies that agree. Its
/// licence stands in THIRD-PARTY-NOTICES.md.
/// </remarks>
internal static class DirectionNumbers
{
    /// <summary>Most dimensions.</summary>
    internal const int Most = 32;

    /// <summary>Columns that each dimension has: as many as an index has bits.</summary>
    internal const int Columns = 32;

    // Degree s, polynomial a, numbers m_1 to m_s. The first dimension has all numbers 1 and no polynomial.
    private static readonly string[] Table =
    [
        "1 0 1", "2 1 1 3", "3 1 1 3 1", "3 2 1 1 1", "4 1 1 1 3 3", "4 4 1 3 5 13", "5 2 1 1 5 5 17", "5 4 1 1 5 5 5",
        "5 7 1 1 7 11 19", "5 11 1 1 5 1 1", "5 13 1 1 1 3 11", "5 14 1 3 5 5 31", "6 1 1 3 3 9 7 49", "6 13 1 1 1 15 21 21",
        "6 16 1 3 1 13 27 49", "6 19 1 1 1 15 7 5", "6 22 1 3 1 15 13 25", "6 25 1 1 5 5 19 61", "7 1 1 3 7 11 23 15 103",
        "7 4 1 3 7 13 13 15 69", "7 7 1 1 3 13 7 35 63", "7 8 1 3 5 9 1 25 53", "7 14 1 3 1 13 9 35 107", "7 19 1 3 1 5 27 61 31",
        "7 21 1 1 5 11 19 41 61", "7 28 1 3 5 3 3 13 69", "7 31 1 1 7 13 1 19 1", "7 32 1 3 7 5 13 19 59", "7 37 1 1 3 9 25 29 41",
        "7 41 1 3 5 13 23 1 55", "7 42 1 3 7 3 13 59 17",
    ];

    /// <summary>The columns of a dimension, from 0: the first binary digit after the point is the highest of 32 bits.</summary>
    internal static uint[] Of(int dimension)
    {
        uint[] columns = new uint[Columns];
        if (dimension == 0)
        {
            for (int k = 0; k < Columns; k++)
            {
                columns[k] = 1U << (31 - k);
            }

            return columns;
        }

        uint[] row = [.. Table[dimension - 1].Split(' ').Select(static text => uint.Parse(text, CultureInfo.InvariantCulture))];
        int degree = (int)row[0];
        for (int k = 0; k < degree; k++)
        {
            columns[k] = row[2 + k] << (31 - k);
        }

        // m_k = 2 a_1 m_(k-1) xor 4 a_2 m_(k-2) xor ... xor 2^s m_(k-s) xor m_(k-s), in the shifted form.
        for (int k = degree; k < Columns; k++)
        {
            uint column = columns[k - degree] ^ (columns[k - degree] >> degree);
            for (int i = 1; i < degree; i++)
            {
                if (((row[1] >> (degree - 1 - i)) & 1) == 1)
                {
                    column ^= columns[k - i];
                }
            }

            columns[k] = column;
        }

        return columns;
    }
}
