namespace SacrificialTape.Sweeps.Sampling;

/// <summary>A scrambled Sobol sequence: rows that fill the space more evenly than random ones.</summary>
/// <remarks>
/// Best with a power of two of rows. At most 32 inputs. Different seeds give independent scrambles: the spread of an answer
/// over some seeds tells its error. More rows later leave the first ones as they are.
/// </remarks>
public sealed class SobolDesign : ShareDesign
{
    private readonly ulong[][] columns;

    /// <summary>Chooses the rows.</summary>
    /// <param name="seed">What the scramble starts from.</param>
    /// <param name="rows">How many, at least 1 and at most 4 294 967 295.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of rows is outside its range.</exception>
    public SobolDesign(ulong seed, long rows)
        : base(seed)
    {
        this.Points = AtLeastOne(rows, nameof(rows));
        this.columns = new ulong[DirectionNumbers.Most][];
        for (int i = 0; i < this.columns.Length; i++)
        {
            this.columns[i] = SobolKernel.Scrambled(seed, i);
        }
    }

    internal override long Points { get; }

    internal override int MostColumns => DirectionNumbers.Most;

    /// <summary>The design in a few words.</summary>
    public override string ToString() => $"scrambled Sobol sequence of {this.Points} rows, seed {this.Seed}";

    internal override void Shares(int column, long firstRow, Span<double> shares)
    {
        ulong[] own = this.columns[column];
        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = SobolKernel.Share(SobolKernel.Point(own, (ulong)(firstRow + i)));
        }
    }
}
