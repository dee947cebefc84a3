using System.Numerics;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>What the estimators of Sobol indices sum up, without rounding.</summary>
internal sealed class SobolSums
{
    private readonly Moments both = new();
    private readonly ExactSum[] differences;
    private readonly ExactSum[] products;
    private readonly ExactSum[] squares;

    internal SobolSums(int inputs)
    {
        this.differences = Sums(inputs);
        this.products = Sums(inputs);
        this.squares = Sums(inputs);
    }

    internal long Points { get; private set; }

    internal double Variance => this.both.Variance;

    /// <summary>Takes a point: A, B, then for each input A with this input of B.</summary>
    internal void Take(ReadOnlySpan<double> rows)
    {
        this.Points++;
        double a = rows[0];
        double b = rows[1];
        this.both.Add(a);
        this.both.Add(b);
        for (int i = 0; i < this.differences.Length; i++)
        {
            double difference = rows[i + 2] - a;
            this.differences[i].Add(difference);
            this.products[i].AddProduct(b, difference);
            this.squares[i].AddProduct(difference, difference);
        }
    }

    internal void Add(SobolSums other)
    {
        this.Points += other.Points;
        this.both.Join(other.both);
        for (int i = 0; i < this.differences.Length; i++)
        {
            this.differences[i].Add(other.differences[i]);
            this.products[i].Add(other.products[i]);
            this.squares[i].Add(other.squares[i]);
        }
    }

    internal void Write(BinaryWriter writer)
    {
        writer.Write(this.Points);
        this.both.Write(writer);
        foreach (ExactSum[] sums in new[] { this.differences, this.products, this.squares })
        {
            Array.ForEach(sums, sum => sum.Write(writer));
        }
    }

    /// <summary>Takes written sums in place of these.</summary>
    internal void Read(BinaryReader reader)
    {
        this.Points = reader.ReadInt64();
        this.both.Read(reader);
        foreach (ExactSum[] sums in new[] { this.differences, this.products, this.squares })
        {
            Array.ForEach(sums, sum => sum.Read(reader));
        }
    }

    /// <summary>The mean of (f(B) - mean) (f(AB) - f(A)) over the variance: taking the mean off beforehand leaves less to chance.</summary>
    internal double FirstOrder(int input)
    {
        double product = ExactSum.Ratio(this.products[input].Whole(), this.Points, ExactSum.LeastExponent);
        double difference = ExactSum.Ratio(this.differences[input].Whole(), this.Points, ExactSum.LeastExponent);
        return (product - (this.both.Mean * difference)) / this.Variance;
    }

    /// <summary>
    /// The figures of <see cref="FirstOrder"/> or <see cref="Total"/> with each group left out in turn, for one input after the other.
    /// The sums of the groups are rounded here, to doubles about the mean of the whole: enough for an error.
    /// </summary>
    internal static double[][] LeftOut(SobolSums[] groups, SobolSums whole, bool total)
    {
        int inputs = whole.differences.Length;
        double middle = whole.both.Mean;
        double[] count = [.. groups.Select(static one => (double)one.Points)];
        double[] off = [.. groups.Select(one => one.both.Mean - middle)];
        double[] spread = [.. groups.Select(one => (one.both.Variance * ((2 * one.Points) - 1)) + (2 * one.Points * (one.both.Mean - middle) * (one.both.Mean - middle)))];
        double points = count.Sum();
        double allOff = count.Zip(off, static (n, d) => n * d).Sum();
        double allSpread = spread.Sum();
        double[] left = [.. count.Select(n => points - n)];
        double[] mean = [.. left.Select((n, g) => (allOff - (count[g] * off[g])) / n)];
        double[] variance = [.. left.Select((n, g) => (allSpread - spread[g] - (2 * n * mean[g] * mean[g])) / ((2 * n) - 1))];
        return [.. Enumerable.Range(0, inputs).Select(input =>
        {
            double[] squares = [.. groups.Select(one => Sum(one.squares[input]))];
            double[] differences = [.. groups.Select(one => Sum(one.differences[input]))];
            double[] products = [.. groups.Select((one, g) => Sum(one.products[input]) - (middle * differences[g]))];
            double allSquares = squares.Sum();
            double allDifferences = differences.Sum();
            double allProducts = products.Sum();
            return left.Select((n, g) => total
                ? (allSquares - squares[g]) / (2 * n) / variance[g]
                : ((allProducts - products[g]) - (mean[g] * (allDifferences - differences[g]))) / n / variance[g]).ToArray();
        })];
    }

    /// <summary>Half the mean square of f(AB) - f(A) over the variance.</summary>
    internal double Total(int input) =>
        ExactSum.Ratio(this.squares[input].Whole(), 2 * (BigInteger)this.Points, ExactSum.LeastExponent) / this.Variance;

    private static double Sum(ExactSum sum) => ExactSum.Ratio(sum.Whole(), 1, ExactSum.LeastExponent);

    private static ExactSum[] Sums(int count) => [.. Enumerable.Range(0, count).Select(static _ => new ExactSum())];
}
