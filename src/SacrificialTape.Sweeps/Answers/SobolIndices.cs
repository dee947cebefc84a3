using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// What share of an answer's variance each input causes alone (first order), and together with all others (total), from the rows
/// of a <see cref="PickFreezeDesign"/>.
/// </summary>
/// <remarks>
/// First order by Saltelli and others (2010), Comput. Phys. Commun. 181, 259-270; total by Jansen (1999), Comput. Phys. Commun.
/// 117, 35-43 (both recalled, check before use; held against the closed forms of two test functions). A point with a row that
/// is not finite is left out whole and counted. Sums are kept without rounding.
/// <para>Intervals are those of a jackknife over 32 groups of points, with Student's t of 31 degrees of freedom (M. H. Quenouille,
/// Biometrika 43 (1956) 353-360; recalled, check before use). Points that fill the space more evenly than random ones have
/// smaller errors than these: there most of the intervals are too wide.</para>
/// </remarks>
public sealed class SobolIndices : Summary
{
    private const int Groups = 32;

    private readonly SobolSums[] groups;
    private readonly long rows;

    /// <summary>Sets it up.</summary>
    /// <param name="design">The design whose rows come; those of another make no sense here, and a study of another refuses this summary.</param>
    /// <param name="inputs">The inputs of the sweep.</param>
    /// <exception cref="ArgumentException">The design cannot take these inputs: some go together, or there are too many.</exception>
    public SobolIndices(PickFreezeDesign design, SweepInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(inputs);
        this.rows = design.RowsOf(inputs);
        this.Design = design;
        this.Inputs = inputs;
        this.groups = [.. Enumerable.Range(0, Groups).Select(_ => new SobolSums(inputs.Count))];
    }

    /// <summary>The design whose rows come.</summary>
    public PickFreezeDesign Design { get; }

    /// <summary>The inputs of the sweep.</summary>
    public SweepInputs Inputs { get; }

    /// <summary>How many points were counted.</summary>
    public long Points => this.groups.Sum(static group => group.Points);

    /// <summary>How many points were left out because a row was not finite.</summary>
    public long LeftOut { get; private set; }

    /// <summary>The variance of the answer over the independent rows.</summary>
    public double Variance => this.Whole().Variance;

    /// <summary>The share that each input causes alone; estimates of small ones may be a little below 0.</summary>
    public ValueList<double> FirstOrder
    {
        get
        {
            SobolSums whole = this.Whole();
            return [.. Enumerable.Range(0, this.Inputs.Count).Select(whole.FirstOrder)];
        }
    }

    /// <summary>The share that each input causes alone and together with all others.</summary>
    public ValueList<double> Total
    {
        get
        {
            SobolSums whole = this.Whole();
            return [.. Enumerable.Range(0, this.Inputs.Count).Select(whole.Total)];
        }
    }

    /// <summary>Between which values each share of <see cref="FirstOrder"/> lies.</summary>
    /// <param name="confidence">How often such an interval holds the true share, more than 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    /// <exception cref="InvalidOperationException">There are fewer than 64 points.</exception>
    public ValueList<ConfidenceInterval> FirstOrderIntervals(double confidence) =>
        this.Intervals(confidence, total: false);

    /// <summary>Between which values each share of <see cref="Total"/> lies.</summary>
    /// <param name="confidence">How often such an interval holds the true share, more than 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    /// <exception cref="InvalidOperationException">There are fewer than 64 points.</exception>
    public ValueList<ConfidenceInterval> TotalIntervals(double confidence) =>
        this.Intervals(confidence, total: true);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The rows do not begin and end with whole points, or the design does not have them.</exception>
    public override void Add(long firstRow, ReadOnlySpan<double> answers)
    {
        int stride = this.Inputs.Count + 2;
        CheckPlace("Sobol indices come in points", stride, this.Design, this.rows, firstRow, answers.Length);
        for (long point = firstRow / stride; !answers.IsEmpty; answers = answers[stride..], point++)
        {
            this.Point(point, answers[..stride]);
        }
    }

    /// <inheritdoc/>
    public override void Join(Summary other)
    {
        SobolIndices given = Same<SobolIndices>(other);
        if (!given.Inputs.IsSame(this.Inputs) || !given.Design.IsSame(this.Design))
        {
            throw new ArgumentException("Its design or inputs are others.", nameof(other));
        }

        for (int i = 0; i < Groups; i++)
        {
            this.groups[i].Add(given.groups[i]);
        }

        this.LeftOut += given.LeftOut;
    }

    /// <inheritdoc/>
    public override Summary Fresh() => new SobolIndices(this.Design, this.Inputs);

    /// <summary>Input by input first order and total as invariant text.</summary>
    public override string ToString()
    {
        ValueList<double> first = this.FirstOrder;
        ValueList<double> total = this.Total;
        return string.Join("; ", this.Inputs.All.Select((input, i) =>
            FormattableString.Invariant($"{input.Name}: first order {first[i]:0.000}, total {total[i]:0.000}")));
    }

    internal override void CheckRows(Design design, SweepInputs inputs) => this.CheckRows(this.Design, this.Inputs, design, inputs);

    private protected override void WriteSetup(BinaryWriter writer)
    {
        writer.Write(this.Design.ToString());
        WriteInputs(writer, this.Inputs);
    }

    private protected override void WriteState(BinaryWriter writer)
    {
        writer.Write(this.LeftOut);
        Array.ForEach(this.groups, group => group.Write(writer));
    }

    private protected override void ReadState(BinaryReader reader)
    {
        this.LeftOut = reader.ReadInt64();
        Array.ForEach(this.groups, group => group.Read(reader));
    }

    // Each run of as many points as there are groups gives one to each, from a random one on: groups stay alike in size, and the
    // pattern of an even sequence of points does not fall together with them.
    private static int GroupOf(long point)
    {
        ulong turn = PhiloxKernel.Words(0, PhiloxKernel.Purpose.Group, 0, (ulong)(point / Groups)).First;
        return (int)(((ulong)point + (turn >> 32)) % Groups);
    }

    private void Point(long point, ReadOnlySpan<double> rows)
    {
        foreach (double row in rows)
        {
            if (!double.IsFinite(row))
            {
                this.LeftOut++;
                return;
            }
        }

        this.groups[GroupOf(point)].Take(rows);
    }

    private SobolSums Whole()
    {
        var whole = new SobolSums(this.Inputs.Count);
        foreach (SobolSums group in this.groups)
        {
            whole.Add(group);
        }

        return whole;
    }

    private ValueList<ConfidenceInterval> Intervals(double confidence, bool total)
    {
        _ = ConfidenceInterval.Checked(confidence);
        if (this.Points < 2 * Groups || this.groups.Any(static group => group.Points == 0))
        {
            throw new InvalidOperationException(
                $"Intervals need at least {2 * Groups} points and some in each of {Groups} groups, and there are {this.Points} points.");
        }

        SobolSums whole = this.Whole();
        double[][] leftOut = SobolSums.LeftOut(this.groups, whole, total);
        return [.. Enumerable.Range(0, this.Inputs.Count).Select(input =>
        {
            double mean = leftOut[input].Average();
            double variance = leftOut[input].Sum(one => (one - mean) * (one - mean)) * (Groups - 1) / Groups;
            return ConfidenceInterval.Around(
                total ? whole.Total(input) : whole.FirstOrder(input), Math.Sqrt(variance), confidence, Groups - 1);
        })];
    }
}
