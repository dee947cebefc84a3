using System.Globalization;
using System.Numerics;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>Mean, deviation, least and greatest of an answer.</summary>
/// <remarks>
/// Sums are kept without rounding, so that neither the order of rows nor the number of threads changes a bit. Rows that are
/// not a number or infinite are counted apart and are in none of the figures.
/// </remarks>
public sealed class Moments : Summary
{
    private readonly ExactSum sum = new();
    private readonly ExactSum squares = new();

    /// <summary>How many rows had a finite number.</summary>
    public long Count { get; private set; }

    /// <summary>How many rows were not a number.</summary>
    public long NotANumber { get; private set; }

    /// <summary>How many rows were infinite, as the life of zinc that nothing corrodes.</summary>
    public long Infinite { get; private set; }

    /// <summary>The mean; not a number without rows.</summary>
    public double Mean => this.Count == 0 ? double.NaN : ExactSum.Ratio(this.sum.Whole(), this.Count, ExactSum.LeastExponent);

    /// <summary>The variance with divisor n - 1; not a number below two rows.</summary>
    public double Variance
    {
        get
        {
            if (this.Count < 2)
            {
                return double.NaN;
            }

            // n times the sum of squares less the square of the sum, without rounding: nothing cancels.
            BigInteger total = this.sum.Whole();
            BigInteger difference = ((this.squares.Whole() * this.Count) << -ExactSum.LeastExponent) - (total * total);
            return ExactSum.Ratio(difference, (BigInteger)this.Count * (this.Count - 1), 2 * ExactSum.LeastExponent);
        }
    }

    /// <summary>The standard deviation with divisor n - 1; not a number below two rows.</summary>
    public double Deviation => Math.Sqrt(this.Variance);

    /// <summary>
    /// The standard error of the mean if rows are independent, as those of a <see cref="Sampling.RandomDesign"/> are. Of an even
    /// design it is too large; of the rows of a <see cref="Sampling.PickFreezeDesign"/> or of paths, whose rows share values with
    /// one another, over random points it is too small.
    /// </summary>
    public double StandardError => Math.Sqrt(this.Variance / this.Count);

    /// <summary>The least finite number; not a number without rows.</summary>
    public double Least { get; private set; } = double.NaN;

    /// <summary>The greatest finite number; not a number without rows.</summary>
    public double Greatest { get; private set; } = double.NaN;

    /// <inheritdoc/>
    public override void Add(long firstRow, ReadOnlySpan<double> answers)
    {
        foreach (double answer in answers)
        {
            this.Add(answer);
        }
    }

    /// <inheritdoc/>
    public override void Join(Summary other)
    {
        Moments given = Same<Moments>(other);
        this.sum.Add(given.sum);
        this.squares.Add(given.squares);
        this.Count += given.Count;
        this.NotANumber += given.NotANumber;
        this.Infinite += given.Infinite;
        this.Bound(given.Least, given.Greatest);
    }

    /// <inheritdoc/>
    public override Summary Fresh() => new Moments();

    /// <summary>Mean, deviation and bounds as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Count} rows, mean {this.Mean:G6}, deviation {this.Deviation:G6}, {this.Least:G6} to {this.Greatest:G6}; not a number {this.NotANumber}, infinite {this.Infinite}");

    internal void Add(double answer)
    {
        if (double.IsNaN(answer))
        {
            this.NotANumber++;
            return;
        }

        if (double.IsInfinity(answer))
        {
            this.Infinite++;
            return;
        }

        this.Count++;
        this.sum.Add(answer);
        this.squares.AddProduct(answer, answer);
        this.Bound(answer, answer);
    }

    internal void Write(BinaryWriter writer)
    {
        writer.Write(this.Count);
        writer.Write(this.NotANumber);
        writer.Write(this.Infinite);
        writer.Write(this.Least);
        writer.Write(this.Greatest);
        this.sum.Write(writer);
        this.squares.Write(writer);
    }

    internal void Read(BinaryReader reader)
    {
        this.Count = reader.ReadInt64();
        this.NotANumber = reader.ReadInt64();
        this.Infinite = reader.ReadInt64();
        this.Least = reader.ReadDouble();
        this.Greatest = reader.ReadDouble();
        this.sum.Read(reader);
        this.squares.Read(reader);
    }

    private protected override void WriteSetup(BinaryWriter writer)
    {
        // Nothing to set up.
    }

    private protected override void WriteState(BinaryWriter writer) => this.Write(writer);

    private protected override void ReadState(BinaryReader reader) => this.Read(reader);

    private void Bound(double least, double greatest)
    {
        this.Least = double.IsNaN(this.Least) ? least : Math.Min(this.Least, double.IsNaN(least) ? this.Least : least);
        this.Greatest = double.IsNaN(this.Greatest) ? greatest : Math.Max(this.Greatest, double.IsNaN(greatest) ? this.Greatest : greatest);
    }
}
