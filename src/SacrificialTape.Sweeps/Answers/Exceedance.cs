using System.Globalization;
using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>How many answers exceed each of some thresholds, counted exactly. An unlimited answer exceeds all.</summary>
public sealed class Exceedance : Summary
{
    private readonly double[] thresholds;
    private readonly long[] above;

    /// <summary>States the thresholds.</summary>
    /// <param name="thresholds">At least one finite number, each more than the one before.</param>
    /// <exception cref="ArgumentException">There is none, one is not finite, or they do not rise.</exception>
    [OverloadResolutionPriority(1)]
    public Exceedance(params ReadOnlySpan<double> thresholds)
    {
        if (thresholds.IsEmpty)
        {
            throw new ArgumentException("At least one threshold.", nameof(thresholds));
        }

        for (int i = 0; i < thresholds.Length; i++)
        {
            if (!double.IsFinite(thresholds[i]) || (i > 0 && !(thresholds[i] > thresholds[i - 1])))
            {
                throw new ArgumentException("Finite numbers, each more than the one before.", nameof(thresholds));
            }
        }

        this.thresholds = thresholds.ToArray();
        this.above = new long[thresholds.Length];
    }

    /// <summary>States the thresholds, from a list or a sequence.</summary>
    /// <param name="thresholds">At least one finite number, each more than the one before.</param>
    /// <exception cref="ArgumentException">There is none, one is not finite, or they do not rise.</exception>
    public Exceedance(IEnumerable<double> thresholds)
        : this((thresholds ?? throw new ArgumentNullException(nameof(thresholds))).ToArray())
    {
    }

    /// <summary>The thresholds.</summary>
    public ValueList<double> Thresholds => [.. this.thresholds];

    /// <summary>How many answers are more than each threshold.</summary>
    public ValueList<long> Above => [.. this.above];

    /// <summary>How many answers there are.</summary>
    public long Count { get; private set; }

    /// <summary>How many rows were not a number; they are in no other figure.</summary>
    public long NotANumber { get; private set; }

    /// <summary>The share of answers that are more than a threshold; not a number without answers.</summary>
    /// <param name="threshold">Which threshold, from 0.</param>
    public double Share(int threshold) => (double)this.above[threshold] / this.Count;

    /// <inheritdoc/>
    public override void Add(long firstRow, ReadOnlySpan<double> answers)
    {
        foreach (double answer in answers)
        {
            if (double.IsNaN(answer))
            {
                this.NotANumber++;
                continue;
            }

            this.Count++;
            for (int i = 0; i < this.thresholds.Length && answer > this.thresholds[i]; i++)
            {
                this.above[i]++;
            }
        }
    }

    /// <inheritdoc/>
    public override void Join(Summary other)
    {
        Exceedance given = Same<Exceedance>(other);
        if (!given.thresholds.AsSpan().SequenceEqual(this.thresholds))
        {
            throw new ArgumentException("Its thresholds are others.", nameof(other));
        }

        for (int i = 0; i < this.above.Length; i++)
        {
            this.above[i] += given.above[i];
        }

        this.Count += given.Count;
        this.NotANumber += given.NotANumber;
    }

    /// <inheritdoc/>
    public override Summary Fresh() => new Exceedance(this.thresholds);

    private protected override void WriteSetup(BinaryWriter writer)
    {
        writer.Write(this.thresholds.Length);
        Array.ForEach(this.thresholds, writer.Write);
    }

    private protected override void WriteState(BinaryWriter writer)
    {
        writer.Write(this.Count);
        writer.Write(this.NotANumber);
        Array.ForEach(this.above, writer.Write);
    }

    private protected override void ReadState(BinaryReader reader)
    {
        this.Count = reader.ReadInt64();
        this.NotANumber = reader.ReadInt64();
        for (int i = 0; i < this.above.Length; i++)
        {
            this.above[i] = reader.ReadInt64();
        }
    }

    /// <summary>Thresholds and shares as invariant text.</summary>
    public override string ToString() => string.Join(", ", this.thresholds.Select((threshold, i) => string.Create(
        CultureInfo.InvariantCulture, $"more than {threshold:G6}: {100 * this.Share(i):0.##} %")));
}
