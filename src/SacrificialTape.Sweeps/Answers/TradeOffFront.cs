using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// Cost against life, or any two answers of which less of the one and more of the other is better: the rows that no other row beats,
/// found while rows stream by, in constant memory.
/// </summary>
/// <remarks>
/// <para>Costs are cut into bins, and each bin keeps its longest life at the least cost. Every point of the front is beaten by no row.
/// A row that is beaten by none and is no point of the front lies in a bin whose point lasts at least as long: so the front tells
/// for every cost the longest life to within the width of a bin.</para>
/// <para>Of equal rows the first is kept, so that fronts of slices join in any order to that of the whole. Not for use from several
/// threads at once: give each its own and join them.</para>
/// </remarks>
public sealed class TradeOffFront
{
    private readonly double[] edges;
    private readonly RangeSpacing spacing;
    private readonly FrontPoint?[] best;

    /// <summary>Sets the bins.</summary>
    /// <param name="lowCost">Lowest edge; more than 0 where spaced by ratios. Cheaper rows share one bin.</param>
    /// <param name="highCost">Highest edge, more than the lowest. Dearer rows share one bin.</param>
    /// <param name="bins">How many bins, 1 to 1 000 000.</param>
    /// <param name="spacing">Whether differences or ratios of edges are equal.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public TradeOffFront(double lowCost, double highCost, int bins, RangeSpacing spacing = RangeSpacing.Logarithmic)
    {
        if (bins is < 1 or > 1_000_000)
        {
            throw new ArgumentOutOfRangeException(nameof(bins), bins, "At least 1 and at most 1000000.");
        }

        var range = new RangedValues(lowCost, highCost, bins + 1, spacing);
        this.spacing = spacing;
        this.edges = [.. Enumerable.Range(0, bins + 1).Select(range.Level)];
        this.best = new FrontPoint?[bins + 2];
    }

    /// <summary>The edges of the bins, one more than there are bins.</summary>
    public ValueList<double> Edges => [.. this.edges];

    /// <summary>How many rows there were with two numbers.</summary>
    public long Count { get; private set; }

    /// <summary>How many rows were left out: cost or life not a number, or a cost that is not finite.</summary>
    public long LeftOut { get; private set; }

    /// <summary>The rows that no row beats, the cheapest first.</summary>
    public ValueList<FrontPoint> Points
    {
        get
        {
            var points = new List<FrontPoint>();
            foreach (FrontPoint? one in this.best)
            {
                if (one is { } point && (points.Count == 0 || point.Life > points[^1].Life))
                {
                    points.Add(point);
                }
            }

            return [.. points];
        }
    }

    /// <summary>Takes consecutive rows.</summary>
    /// <param name="firstRow">The first row, counted in the whole sweep from 0.</param>
    /// <param name="costs">The costs of the rows.</param>
    /// <param name="lives">The lives of the rows.</param>
    /// <exception cref="ArgumentException">There are not as many lives as costs.</exception>
    public void Add(long firstRow, ReadOnlySpan<double> costs, ReadOnlySpan<double> lives)
    {
        if (costs.Length != lives.Length)
        {
            throw new ArgumentException($"{lives.Length} lives, but {costs.Length} costs.", nameof(lives));
        }

        for (int i = 0; i < costs.Length; i++)
        {
            if (double.IsFinite(costs[i]) && !double.IsNaN(lives[i]))
            {
                this.Count++;
                this.Take(new FrontPoint(firstRow + i, costs[i], lives[i]));
            }
            else
            {
                this.LeftOut++;
            }
        }
    }

    /// <summary>Takes the rows of a study, or of a slice of it.</summary>
    /// <param name="study">The study.</param>
    /// <param name="cost">Name of the answer of which less is better.</param>
    /// <param name="life">Name of the answer of which more is better.</param>
    /// <param name="slice">A slice by <see cref="Study.Slice"/>; left out, all rows.</param>
    /// <param name="cancellation">Ends the run early; the front is then of no use.</param>
    /// <exception cref="ArgumentException">No answer has that name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The slice does not lie in the study.</exception>
    /// <exception cref="OperationCanceledException">The run was ended early.</exception>
    public void Add(Study study, string cost, string life, SweepSlice? slice = null, CancellationToken cancellation = default)
    {
        const int Block = 1024;
        ArgumentNullException.ThrowIfNull(study);
        SweepSlice part = slice ?? new SweepSlice(0, study.Rows);
        for (long done = 0; done < part.Rows; done += Block)
        {
            cancellation.ThrowIfCancellationRequested();
            AnswerBlock answers = study.Work(part.FirstRow + done, (int)Math.Min(Block, part.Rows - done)).Answers;
            this.Add(part.FirstRow + done, answers[cost], answers[life]);
        }
    }

    /// <summary>Joins the front of other rows of the same sweep to this one.</summary>
    /// <param name="other">The other one; it stays as it is.</param>
    /// <exception cref="ArgumentException">Its bins are others.</exception>
    public void Join(TradeOffFront other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!other.edges.AsSpan().SequenceEqual(this.edges))
        {
            throw new ArgumentException("Its bins are others.", nameof(other));
        }

        foreach (FrontPoint? one in other.best)
        {
            if (one is { } point)
            {
                this.Take(point);
            }
        }

        this.Count += other.Count;
        this.LeftOut += other.LeftOut;
    }

    /// <summary>A front with these bins that has taken nothing.</summary>
    public TradeOffFront Fresh() => new(this.edges[0], this.edges[^1], this.edges.Length - 1, this.spacing);

    /// <summary>The points as invariant text, a line each.</summary>
    public override string ToString() => string.Join('\n', this.Points);

    private void Take(in FrontPoint point)
    {
        int found = Array.BinarySearch(this.edges, point.Cost);
        int bin = found >= 0 ? found + 1 : ~found;
        if (this.best[bin] is not { } kept || point.Life > kept.Life
            || (point.Life == kept.Life && (point.Cost < kept.Cost || (point.Cost == kept.Cost && point.Row < kept.Row))))
        {
            this.best[bin] = point;
        }
    }
}
