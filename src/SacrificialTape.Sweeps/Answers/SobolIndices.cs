using System.Numerics;
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
/// </remarks>
public sealed class SobolIndices : Summary
{
    private readonly Moments both = new();
    private readonly ExactSum[] differences;
    private readonly ExactSum[] products;
    private readonly ExactSum[] squares;

    /// <summary>Sets it up.</summary>
    /// <param name="inputs">The inputs of the sweep.</param>
    public SobolIndices(SweepInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        this.Inputs = inputs;
        this.differences = Sums(inputs.Count);
        this.products = Sums(inputs.Count);
        this.squares = Sums(inputs.Count);
    }

    /// <summary>The inputs of the sweep.</summary>
    public SweepInputs Inputs { get; }

    /// <summary>How many points were counted.</summary>
    public long Points { get; private set; }

    /// <summary>How many points were left out because a row was not finite.</summary>
    public long LeftOut { get; private set; }

    /// <summary>The variance of the answer over the independent rows.</summary>
    public double Variance => this.both.Variance;

    /// <summary>The share that each input causes alone; estimates of small ones may be a little below 0.</summary>
    public ValueList<double> FirstOrder => [.. Enumerable.Range(0, this.Inputs.Count).Select(this.First)];

    /// <summary>The share that each input causes alone and together with all others.</summary>
    public ValueList<double> Total => [.. this.squares.Select(square =>
        ExactSum.Ratio(square.Whole(), 2 * (BigInteger)this.Points, ExactSum.LeastExponent) / this.Variance)];

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The rows do not begin and end with whole points.</exception>
    public override void Add(long firstRow, ReadOnlySpan<double> answers)
    {
        int stride = this.Inputs.Count + 2;
        if (firstRow % stride != 0 || answers.Length % stride != 0)
        {
            throw new ArgumentException($"Rows of Sobol indices come in points of {stride}: begin and end with whole ones.", nameof(answers));
        }

        for (; !answers.IsEmpty; answers = answers[stride..])
        {
            this.Point(answers[..stride]);
        }
    }

    /// <inheritdoc/>
    public override void Join(Summary other)
    {
        SobolIndices given = Same<SobolIndices>(other);
        if (given.Inputs.Count != this.Inputs.Count)
        {
            throw new ArgumentException("Its inputs are others.", nameof(other));
        }

        this.both.Join(given.both);
        for (int i = 0; i < this.Inputs.Count; i++)
        {
            this.differences[i].Add(given.differences[i]);
            this.products[i].Add(given.products[i]);
            this.squares[i].Add(given.squares[i]);
        }

        this.Points += given.Points;
        this.LeftOut += given.LeftOut;
    }

    /// <inheritdoc/>
    public override Summary Fresh() => new SobolIndices(this.Inputs);

    /// <summary>Input by input first order and total as invariant text.</summary>
    public override string ToString()
    {
        ValueList<double> first = this.FirstOrder;
        ValueList<double> total = this.Total;
        return string.Join("; ", this.Inputs.All.Select((input, i) =>
            FormattableString.Invariant($"{input.Name}: first order {first[i]:0.000}, total {total[i]:0.000}")));
    }

    private protected override void WriteSetup(BinaryWriter writer) => WriteNames(writer, this.Inputs);

    private protected override void WriteState(BinaryWriter writer)
    {
        writer.Write(this.Points);
        writer.Write(this.LeftOut);
        this.both.Write(writer);
        foreach (ExactSum[] sums in new[] { this.differences, this.products, this.squares })
        {
            Array.ForEach(sums, sum => sum.Write(writer));
        }
    }

    private protected override void ReadState(BinaryReader reader)
    {
        this.Points = reader.ReadInt64();
        this.LeftOut = reader.ReadInt64();
        this.both.Read(reader);
        foreach (ExactSum[] sums in new[] { this.differences, this.products, this.squares })
        {
            Array.ForEach(sums, sum => sum.Read(reader));
        }
    }

    private static ExactSum[] Sums(int count) => [.. Enumerable.Range(0, count).Select(static _ => new ExactSum())];

    private void Point(ReadOnlySpan<double> rows)
    {
        foreach (double row in rows)
        {
            if (!double.IsFinite(row))
            {
                this.LeftOut++;
                return;
            }
        }

        this.Points++;
        double a = rows[0];
        double b = rows[1];
        this.both.Add(a);
        this.both.Add(b);
        for (int i = 0; i < this.Inputs.Count; i++)
        {
            double difference = rows[i + 2] - a;
            this.differences[i].Add(difference);
            this.products[i].AddProduct(b, difference);
            this.squares[i].AddProduct(difference, difference);
        }
    }

    // The mean of (f(B) - mean) (f(AB) - f(A)): taking the mean off beforehand leaves less to chance.
    private double First(int input)
    {
        double product = ExactSum.Ratio(this.products[input].Whole(), this.Points, ExactSum.LeastExponent);
        double difference = ExactSum.Ratio(this.differences[input].Whole(), this.Points, ExactSum.LeastExponent);
        return (product - (this.both.Mean * difference)) / this.Variance;
    }
}
