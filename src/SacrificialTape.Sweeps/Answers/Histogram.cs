using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>How often an answer falls into each of fixed bins, and quantiles to within a bin.</summary>
/// <remarks>A bin holds its lower edge and not its upper one; what lies outside all bins is counted apart, infinite answers too.</remarks>
public sealed class Histogram : Summary
{
    private readonly double[] edges;
    private readonly long[] counts;
    private readonly RangeSpacing spacing;

    /// <summary>Sets the bins.</summary>
    /// <param name="low">Lowest edge; more than 0 where spaced by ratios.</param>
    /// <param name="high">Highest edge, more than the lowest.</param>
    /// <param name="bins">How many bins, 1 to 1 000 000.</param>
    /// <param name="spacing">Whether differences or ratios of edges are equal.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Histogram(double low, double high, int bins, RangeSpacing spacing = RangeSpacing.Linear)
    {
        if (bins is < 1 or > 1_000_000)
        {
            throw new ArgumentOutOfRangeException(nameof(bins), bins, "At least 1 and at most 1000000.");
        }

        var range = new RangedValues(low, high, bins + 1, spacing);
        this.spacing = spacing;
        this.edges = new double[bins + 1];
        for (int i = 0; i <= bins; i++)
        {
            this.edges[i] = range.Level(i);
        }

        this.counts = new long[bins];
    }

    /// <summary>The edges of the bins, one more than there are bins.</summary>
    public ValueList<double> Edges => [.. this.edges];

    /// <summary>How many answers each bin holds.</summary>
    public ValueList<long> Counts => [.. this.counts];

    /// <summary>How many answers lie below the lowest edge.</summary>
    public long BelowAll { get; private set; }

    /// <summary>How many answers lie at the highest edge or above.</summary>
    public long AboveAll { get; private set; }

    /// <summary>How many rows were not a number; they are in no other figure.</summary>
    public long NotANumber { get; private set; }

    /// <summary>How many answers there are.</summary>
    public long Count => this.BelowAll + this.counts.Sum() + this.AboveAll;

    /// <summary>Between which values the quantile lies.</summary>
    /// <param name="share">The share of answers at or below it, more than 0, at most 1: the least answer with at least that share.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    /// <exception cref="InvalidOperationException">There is no answer.</exception>
    public QuantileBounds Quantile(double share)
    {
        if (!(share is > 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "More than 0 and at most 1: write 0.05 for 5 %.");
        }

        long all = this.Count;
        if (all == 0)
        {
            throw new InvalidOperationException("Without answers there is no quantile.");
        }

        // Ranks are whole numbers: a product that rounding lifted above one must not count as the next.
        long rank = Math.Max(1, (long)Math.Ceiling(share * all * (1 - 1e-15)));
        long passed = this.BelowAll;
        if (rank <= passed)
        {
            return new(double.NegativeInfinity, this.edges[0]);
        }

        for (int i = 0; i < this.counts.Length; i++)
        {
            passed += this.counts[i];
            if (rank <= passed)
            {
                return new(this.edges[i], this.edges[i + 1]);
            }
        }

        return new(this.edges[^1], double.PositiveInfinity);
    }

    /// <inheritdoc/>
    public override void Add(long firstRow, ReadOnlySpan<double> answers)
    {
        foreach (double answer in answers)
        {
            if (double.IsNaN(answer))
            {
                this.NotANumber++;
            }
            else if (answer < this.edges[0])
            {
                this.BelowAll++;
            }
            else if (answer >= this.edges[^1])
            {
                this.AboveAll++;
            }
            else
            {
                int found = Array.BinarySearch(this.edges, answer);
                this.counts[found >= 0 ? found : ~found - 1]++;
            }
        }
    }

    /// <inheritdoc/>
    public override void Join(Summary other)
    {
        Histogram given = Same<Histogram>(other);
        if (!given.edges.AsSpan().SequenceEqual(this.edges))
        {
            throw new ArgumentException("Its bins are others.", nameof(other));
        }

        for (int i = 0; i < this.counts.Length; i++)
        {
            this.counts[i] += given.counts[i];
        }

        this.BelowAll += given.BelowAll;
        this.AboveAll += given.AboveAll;
        this.NotANumber += given.NotANumber;
    }

    /// <inheritdoc/>
    public override Summary Fresh() => new Histogram(this.edges[0], this.edges[^1], this.counts.Length, this.spacing);

    private protected override void WriteSetup(BinaryWriter writer)
    {
        writer.Write(this.edges[0]);
        writer.Write(this.edges[^1]);
        writer.Write(this.counts.Length);
        writer.Write((int)this.spacing);
    }

    // Most bins are empty or hold little.
    private protected override void WriteState(BinaryWriter writer)
    {
        writer.Write(this.BelowAll);
        writer.Write(this.AboveAll);
        writer.Write(this.NotANumber);
        Array.ForEach(this.counts, writer.Write7BitEncodedInt64);
    }

    private protected override void ReadState(BinaryReader reader)
    {
        this.BelowAll = reader.ReadInt64();
        this.AboveAll = reader.ReadInt64();
        this.NotANumber = reader.ReadInt64();
        for (int i = 0; i < this.counts.Length; i++)
        {
            this.counts[i] = reader.Read7BitEncodedInt64();
        }
    }

    /// <summary>Bins and counts outside as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Count} answers in {this.counts.Length} bins from {this.edges[0]:G6} to {this.edges[^1]:G6}; below {this.BelowAll}, above {this.AboveAll}, not a number {this.NotANumber}");
}
