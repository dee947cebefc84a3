using System.Runtime.ExceptionServices;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps;

/// <summary>Inputs, a design that chooses rows of them, and a model that answers.</summary>
/// <remarks>
/// A row depends on the design and its number alone, and summaries join without rounding: slices joined are the whole, and the number
/// of threads changes no bit. On a machine with other vector instructions the last digits of a model may differ.
/// </remarks>
/// <example><code source="SweepsPage.cs" region="uncertain" /></example>
public sealed class Study
{
    // Enough rows to outweigh the start of a block, few enough for the nearest cache.
    private const int BlockRows = 1024;

    private readonly SweepModel model;
    private readonly int stride;

    /// <summary>Puts a study together.</summary>
    /// <param name="inputs">The inputs.</param>
    /// <param name="design">Which rows there are.</param>
    /// <param name="answers">Names of the answers, at least one, each once.</param>
    /// <param name="model">What works them out.</param>
    /// <exception cref="ArgumentException">There is no answer, a name occurs twice, or the design cannot take these inputs.</exception>
    public Study(SweepInputs inputs, Design design, IEnumerable<string> answers, SweepModel model)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(model);
        this.Inputs = inputs;
        this.Design = design;
        this.Answers = [.. answers];
        if (this.Answers.Count == 0 || this.Answers.Distinct(StringComparer.Ordinal).Count() != this.Answers.Count)
        {
            throw new ArgumentException("At least one answer, each with a name of its own.", nameof(answers));
        }

        this.model = model;
        this.Rows = design.RowsOf(inputs);
        this.stride = design.RowsTogether(inputs);
    }

    /// <summary>The inputs.</summary>
    public SweepInputs Inputs { get; }

    /// <summary>Which rows there are.</summary>
    public Design Design { get; }

    /// <summary>Names of the answers.</summary>
    public ValueList<string> Answers { get; }

    /// <summary>How many rows there are.</summary>
    public long Rows { get; }

    /// <summary>How many consecutive rows belong together, as the paths of a screening do; a slice holds all of them or none.</summary>
    public int RowsTogether => this.stride;

    /// <summary>One of some slices that together are the whole; rows that belong together stay together.</summary>
    /// <param name="slice">Which slice, from 0.</param>
    /// <param name="slices">How many there are, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such slice.</exception>
    public SweepSlice Slice(int slice, int slices)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(slices, 1);
        if (slice < 0 || slice >= slices)
        {
            throw new ArgumentOutOfRangeException(nameof(slice), slice, $"From 0 to {slices - 1}.");
        }

        long units = this.Rows / this.stride;
        long first = (long)((Int128)units * slice / slices);
        long next = (long)((Int128)units * (slice + 1) / slices);
        return new SweepSlice(first * this.stride, (next - first) * this.stride);
    }

    /// <summary>Works out some rows and gives them with their answers, for a table or a file.</summary>
    /// <param name="firstRow">The first row, from 0.</param>
    /// <param name="rows">How many.</param>
    /// <exception cref="ArgumentOutOfRangeException">The study does not have these rows.</exception>
    public StudyRows Work(long firstRow, int rows)
    {
        SweepBlock block = this.Design.Make(this.Inputs, firstRow, rows);
        return new StudyRows(block, this.Answer(block));
    }

    /// <summary>Refuses summaries that this study has no rows for: of an answer it does not have, or of another design.</summary>
    /// <param name="summaries">What is to be kept.</param>
    /// <exception cref="ArgumentException">
    /// A summary names no answer of this study, or is for the rows of another design or of other inputs; the message names both.
    /// </exception>
    public void Check(IEnumerable<AnswerSummary> summaries)
    {
        ArgumentNullException.ThrowIfNull(summaries);
        var names = new AnswerBlock(this.Answers, 0);
        foreach (AnswerSummary one in summaries)
        {
            _ = names.IndexOf(one.Answer);
            one.Summary.CheckRows(this.Design, this.Inputs);
        }
    }

    /// <summary>Works out all rows, or those of a slice, for one answer, and gives the filled summary.</summary>
    /// <typeparam name="TSummary">The kind of summary.</typeparam>
    /// <param name="answer">Name of the answer.</param>
    /// <param name="summary">What is to be kept; it stays as it is, another one set up like it is filled.</param>
    /// <param name="slice">A slice by <see cref="Slice"/>; left out, all rows.</param>
    /// <param name="threads">How many threads at most, at least 1; it changes the time and nothing else.</param>
    /// <param name="cancellation">Ends the run early.</param>
    /// <returns>The filled summary.</returns>
    /// <remarks>Each call works the rows out anew: several summaries of one pass are for <see cref="Run"/>.</remarks>
    /// <exception cref="ArgumentException">
    /// The study has no such answer, the summary is for the rows of another design or of other inputs, or the slice does not lie in it.
    /// </exception>
    /// <exception cref="OperationCanceledException">The run was ended early.</exception>
    public TSummary Summarize<TSummary>(
        string answer, TSummary summary, SweepSlice? slice = null, int threads = 1, CancellationToken cancellation = default)
        where TSummary : Summary
    {
        ArgumentNullException.ThrowIfNull(summary);
        var filled = (TSummary)summary.Fresh();
        this.Run([new AnswerSummary(answer, filled)], slice, threads, cancellation);
        return filled;
    }

    /// <summary>Works out all rows, or those of a slice, and gives each answer to its summaries.</summary>
    /// <param name="summaries">What is to be kept; each takes the rows of this run on top of what it has.</param>
    /// <param name="slice">A slice by <see cref="Slice"/>; left out, all rows.</param>
    /// <param name="threads">How many threads at most, at least 1; it changes the time and nothing else.</param>
    /// <param name="cancellation">Ends the run early; the summaries are then of no use.</param>
    /// <exception cref="ArgumentException">
    /// A summary names no answer of this study, or is for the rows of another design or of other inputs, or the slice does not lie in it.
    /// </exception>
    /// <exception cref="OperationCanceledException">The run was ended early.</exception>
    public void Run(
        IEnumerable<AnswerSummary> summaries, SweepSlice? slice = null, int threads = 1, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(summaries);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        AnswerSummary[] kept = [.. summaries];
        this.Check(kept);
        var names = new AnswerBlock(this.Answers, 0);
        int[] columns = [.. kept.Select(one => names.IndexOf(one.Answer))];
        SweepSlice part = slice ?? new SweepSlice(0, this.Rows);
        if (part.FirstRow > this.Rows - part.Rows
            || part.FirstRow % this.stride != 0 || part.Rows % this.stride != 0)
        {
            throw new ArgumentException($"Not a slice of this study, which has {this.Rows} rows in units of {this.stride}.", nameof(slice));
        }

        int size = Math.Max(BlockRows / this.stride, 1) * this.stride;
        long blocks = (part.Rows + size - 1) / size;
        try
        {
            _ = Parallel.For(
                0L,
                blocks,
                new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation },
                () => new Worker(this, size, [.. kept.Select(static one => one.Summary.Fresh())]),
                (block, _, worker) =>
                {
                    long first = part.FirstRow + (block * size);
                    worker.Take(first, (int)Math.Min(size, part.FirstRow + part.Rows - first), columns);
                    return worker;
                },
                worker =>
                {
                    lock (kept)
                    {
                        for (int i = 0; i < kept.Length; i++)
                        {
                            kept[i].Summary.Join(worker.Summaries[i]);
                        }
                    }
                });
        }
        catch (AggregateException several) when (several.InnerExceptions.Count >= 1)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }
    }

    /// <summary>Works out rows of the caller's own.</summary>
    internal AnswerBlock Answer(SweepBlock rows)
    {
        var given = new AnswerBlock(this.Answers, rows.Rows);
        given.Begin(rows.Rows);
        this.model(rows, given);
        return given;
    }

    /// <summary>Inputs and design in a few words.</summary>
    public override string ToString() => $"{this.Design}: {this.Inputs}";

    private sealed class Worker(Study study, int size, Summary[] summaries)
    {
        private readonly SweepBlock rows = new(study.Inputs, size);
        private readonly AnswerBlock answers = new(study.Answers, size);

        internal Summary[] Summaries { get; } = summaries;

        internal void Take(long firstRow, int count, int[] columns)
        {
            study.Design.Fill(this.rows, firstRow, count);
            this.answers.Begin(count);
            study.model(this.rows, this.answers);
            for (int i = 0; i < columns.Length; i++)
            {
                this.Summaries[i].Add(firstRow, this.answers[columns[i]]);
            }
        }
    }
}
