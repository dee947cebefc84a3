using System.Runtime.ExceptionServices;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// The least value, for instance thickness of foil, at which an answer reaches a requirement in a stated share of rows. Every value is
/// tried on the same rows, so that the share can only rise with it and the least value is bracketed as closely as asked.
/// </summary>
/// <remarks>
/// The error of chance is that of an order statistic: the least value is the one that a certain row needs, and the bounds are those
/// that rows a few places before and after it need, by the normal approximation of the binomial distribution. Rows must be independent
/// for it; of an even design it is too wide.
/// </remarks>
public sealed class ThresholdSearch
{
    private const int BlockRows = 1024;
    private const int Tries = 8;

    private readonly SweepInputs inputs;
    private readonly Design design;
    private readonly ThresholdModel model;
    private readonly long rows;

    /// <summary>Puts a search together.</summary>
    /// <param name="inputs">The inputs.</param>
    /// <param name="design">Which rows there are.</param>
    /// <param name="model">What works out the answer at a value.</param>
    /// <exception cref="ArgumentException">The design cannot take these inputs.</exception>
    public ThresholdSearch(SweepInputs inputs, Design design, ThresholdModel model)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(model);
        this.inputs = inputs;
        this.design = design;
        this.model = model;
        this.rows = design.RowsOf(inputs);
    }

    /// <summary>Finds the least value.</summary>
    /// <param name="requirement">What the answer must reach: at least this.</param>
    /// <param name="probability">In which share of rows, more than 0, less than 1.</param>
    /// <param name="low">The lowest value that may be tried, more than 0.</param>
    /// <param name="high">The highest, more than the lowest.</param>
    /// <param name="confidence">The confidence of the interval, more than 0, less than 1.</param>
    /// <param name="relativeTolerance">How close the bracket, as a share of the value: 1e-12 to 0.1.</param>
    /// <param name="threads">How many threads at most, at least 1; it changes the time and nothing else.</param>
    /// <param name="cancellation">Ends the search early.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A number is outside its range, too few rows reach the requirement even at the highest value, or enough at the lowest.
    /// </exception>
    /// <exception cref="InvalidOperationException">Fewer rows reach the requirement at a higher value: the answer falls as the value rises.</exception>
    /// <exception cref="OperationCanceledException">The search was ended early.</exception>
    public LeastValue Find(
        double requirement,
        double probability,
        double low,
        double high,
        double confidence = 0.95,
        double relativeTolerance = 1e-6,
        int threads = 1,
        CancellationToken cancellation = default)
    {
        if (!double.IsFinite(requirement))
        {
            throw new ArgumentOutOfRangeException(nameof(requirement), requirement, "A finite number.");
        }

        if (!(probability is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "More than 0 and less than 1: write 0.9 for 90 %.");
        }

        _ = new RangedValues(low, high, 2, RangeSpacing.Logarithmic);
        _ = ConfidenceInterval.Checked(confidence);
        if (!(relativeTolerance is >= 1e-12 and <= 0.1))
        {
            throw new ArgumentOutOfRangeException(nameof(relativeTolerance), relativeTolerance, "At least 1e-12 and at most 0.1.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        (long[] ends, _) = this.Reaching([low, high], requirement, threads, cancellation);

        // Ranks are whole numbers: a product that rounding lifted above one must not count as the next.
        long wanted = Math.Max(1, (long)Math.Ceiling(probability * this.rows * (1 - 1e-15)));
        if (ends[1] < wanted)
        {
            throw new ArgumentOutOfRangeException(nameof(high), high, FormattableString.Invariant(
                $"Even there only {ends[1]} of {this.rows} rows reach {requirement}, and {wanted} must: let higher values be tried."));
        }

        if (ends[0] >= wanted)
        {
            throw new ArgumentOutOfRangeException(nameof(low), low, FormattableString.Invariant(
                $"There {ends[0]} of {this.rows} rows reach {requirement} already, and {wanted} must: let lower values be tried."));
        }

        double spread = NormalKernel.Quantile((1 + confidence) / 2) * Math.Sqrt(this.rows * probability * (1 - probability));
        long[] ranks = [wanted, (long)Math.Floor((this.rows * probability) - spread), (long)Math.Ceiling((this.rows * probability) + spread) + 1];
        var brackets = new Bracket?[3];
        for (int i = 0; i < ranks.Length; i++)
        {
            brackets[i] = ranks[i] >= 1 && ranks[i] <= ends[1] && ranks[i] > ends[0] ? new Bracket(low, high, ends[0], ends[1]) : null;
        }

        while (brackets.Any(one => one is { } open && open.Width > relativeTolerance))
        {
            // Some values inside each bracket at once: the rows are drawn once for all of them.
            double[] values = [.. brackets.Where(one => one is { } open && open.Width > relativeTolerance).SelectMany(static one => one!.Value.Inside(Tries)).Distinct().Order()];
            if (values.Length == 0)
            {
                break;
            }

            (long[] counts, _) = this.Reaching(values, requirement, threads, cancellation);
            for (int i = 0; i < values.Length; i++)
            {
                if (i > 0 && counts[i] < counts[i - 1])
                {
                    throw new InvalidOperationException(FormattableString.Invariant(
                        $"At {values[i]:R} fewer rows reach the requirement than at {values[i - 1]:R}: the answer must not fall as the value rises."));
                }

                for (int k = 0; k < brackets.Length; k++)
                {
                    brackets[k] = brackets[k]?.With(values[i], counts[i], ranks[k]);
                }
            }
        }

        Bracket found = brackets[0]!.Value;
        (long[] reached, long[] none) = this.Reaching([found.High], requirement, threads, cancellation);
        return new LeastValue(
            found.High,
            found.Low,
            (double)reached[0] / this.rows,
            new ConfidenceInterval(brackets[1]?.Low ?? double.NegativeInfinity, brackets[2]?.High ?? double.PositiveInfinity),
            this.rows,
            none[0]);
    }

    // How many rows reach the requirement at each value, and how many have no answer.
    private (long[] Reached, long[] None) Reaching(double[] values, double requirement, int threads, CancellationToken cancellation)
    {
        long[] reached = new long[values.Length];
        long[] none = new long[values.Length];
        int stride = this.design.RowsTogether(this.inputs);
        int size = Math.Max(BlockRows / stride, 1) * stride;
        try
        {
            _ = Parallel.For(
                0L,
                (this.rows + size - 1) / size,
                new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation },
                () => (Rows: new SweepBlock(this.inputs, size), Answers: new double[size], Reached: new long[values.Length], None: new long[values.Length]),
                (block, _, own) =>
                {
                    long first = block * size;
                    int count = (int)Math.Min(size, this.rows - first);
                    this.design.Fill(own.Rows, first, count);
                    for (int i = 0; i < values.Length; i++)
                    {
                        Span<double> answers = own.Answers.AsSpan(0, count);
                        answers.Fill(double.NaN);
                        this.model(values[i], own.Rows, answers);
                        foreach (double answer in answers)
                        {
                            own.Reached[i] += answer >= requirement ? 1 : 0;
                            own.None[i] += double.IsNaN(answer) ? 1 : 0;
                        }
                    }

                    return own;
                },
                own =>
                {
                    lock (reached)
                    {
                        for (int i = 0; i < values.Length; i++)
                        {
                            reached[i] += own.Reached[i];
                            none[i] += own.None[i];
                        }
                    }
                });
        }
        catch (AggregateException several) when (several.InnerExceptions.Count >= 1)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        return (reached, none);
    }

    /// <summary>Two values, at the lower of which too few rows reach the requirement and at the higher enough.</summary>
    private readonly record struct Bracket(double Low, double High, long AtLow, long AtHigh)
    {
        internal double Width => (this.High - this.Low) / this.High;

        internal IEnumerable<double> Inside(int count)
        {
            // Equal ratios while the bracket is wide: a thickness may be sought over decades.
            for (int i = 1; i <= count; i++)
            {
                double share = (double)i / (count + 1);
                double value = this.High > 2 * this.Low
                    ? this.Low * Math.Exp(share * Math.Log(this.High / this.Low))
                    : this.Low + (share * (this.High - this.Low));
                if (value > this.Low && value < this.High)
                {
                    yield return value;
                }
            }
        }

        internal Bracket With(double value, long count, long rank) =>
            value <= this.Low || value >= this.High ? this : count >= rank ? this with { High = value, AtHigh = count } : this with { Low = value, AtLow = count };
    }
}
