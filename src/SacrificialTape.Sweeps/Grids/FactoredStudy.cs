using System.Runtime.ExceptionServices;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Grids;

/// <summary>A full grid of factors and a model in stages, each worked out once for each combination of the factors behind it.</summary>
/// <remarks>
/// <para>A thousand climates by a thousand tapes are a million rows, but only a thousand first-year rates: the stage that answers
/// the rate declares that it needs the climate alone. A stage can read nothing that it did not declare, so that the declaration cannot
/// be wrong; the answers are those of <see cref="WorkRowByRow"/>, bit for bit.</para>
/// <para>Answers of a stage are kept for all combinations of its factors where these are at most 4 194 304 and not the whole grid;
/// otherwise they are worked out with the rows. The last factor changes from row to row: put the one with most levels last.</para>
/// </remarks>
public sealed class FactoredStudy
{
    private const int MostKept = 1 << 22;

    private static readonly GridDesign Design = new();

    private readonly GridPlaces places;
    private readonly Dictionary<string, GridSource> inputs = new(StringComparer.Ordinal);
    private readonly int[][] factorsOf;
    private readonly Lazy<Dictionary<string, GridSource>> kept;

    /// <summary>Puts a study together.</summary>
    /// <param name="factors">At least one, at most 30, each with a name of its own; no two have an input of the same name.</param>
    /// <param name="stages">At least one, in the order in which they need one another.</param>
    /// <exception cref="ArgumentException">
    /// There is no factor or no stage, a name occurs twice, a stage needs what no input and no stage before it gives, or the grid has
    /// more rows than can be counted.
    /// </exception>
    public FactoredStudy(IEnumerable<GridFactor> factors, IEnumerable<GridStage> stages)
    {
        ArgumentNullException.ThrowIfNull(factors);
        ArgumentNullException.ThrowIfNull(stages);
        this.Factors = [.. factors];
        this.Stages = [.. stages];
        if (this.Factors.Count is < 1 or > 30 || this.Factors.Select(static one => one.Name).Distinct(StringComparer.Ordinal).Count() != this.Factors.Count)
        {
            throw new ArgumentException("At least one factor, at most 30, each with a name of its own.", nameof(factors));
        }

        if (this.Stages.Count == 0)
        {
            throw new ArgumentException("At least one stage.", nameof(stages));
        }

        for (int factor = 0; factor < this.Factors.Count; factor++)
        {
            GridFactor one = this.Factors[factor];
            for (int input = 0; input < one.Inputs.Count; input++)
            {
                if (!this.inputs.TryAdd(one.Inputs[input].Name, new GridSource(one.Column(input), [factor], 0)))
                {
                    throw new ArgumentException($"Two inputs are named '{one.Inputs[input].Name}'.", nameof(factors));
                }
            }
        }

        var behind = this.inputs.ToDictionary(static one => one.Key, static one => one.Value.Factors, StringComparer.Ordinal);
        this.factorsOf = new int[this.Stages.Count][];
        for (int i = 0; i < this.Stages.Count; i++)
        {
            GridStage stage = this.Stages[i];
            this.factorsOf[i] = [.. stage.Needs.SelectMany(need => behind.TryGetValue(need, out int[]? known)
                ? known
                : throw new ArgumentException(
                    $"The stage '{stage}' needs '{need}', which is no input and no answer of a stage before it.", nameof(stages))).Distinct().Order()];
            foreach (string answer in stage.Answers)
            {
                if (!behind.TryAdd(answer, this.factorsOf[i]))
                {
                    throw new ArgumentException($"'{answer}' is the name of an input or an answer already.", nameof(stages));
                }
            }
        }

        this.Answers = [.. this.Stages.SelectMany(static stage => stage.Answers)];
        try
        {
            this.places = new GridPlaces(this.Factors, [.. Enumerable.Range(0, this.Factors.Count)]);
        }
        catch (OverflowException)
        {
            throw new ArgumentException("The grid has more rows than can be counted: take fewer levels.", nameof(factors));
        }

        this.Inputs = new SweepInputs(this.Factors.SelectMany(static factor => factor.Inputs));
        this.kept = new(this.Keep);
    }

    /// <summary>The factors; the last one changes from row to row.</summary>
    public ValueList<GridFactor> Factors { get; }

    /// <summary>The inputs of all factors, in their order.</summary>
    public SweepInputs Inputs { get; }

    /// <summary>The stages of the model.</summary>
    public ValueList<GridStage> Stages { get; }

    /// <summary>Names of the answers.</summary>
    public ValueList<string> Answers { get; }

    /// <summary>How many rows there are: the product of all levels.</summary>
    public long Rows => this.places.Rows;

    /// <summary>The names of the factors behind an answer.</summary>
    /// <param name="answer">Name of the answer.</param>
    /// <exception cref="ArgumentException">No answer has that name.</exception>
    public ValueList<string> FactorsBehind(string answer)
    {
        for (int i = 0; i < this.Stages.Count; i++)
        {
            if (this.Stages[i].Answers.Contains(answer))
            {
                return [.. this.factorsOf[i].Select(factor => this.Factors[factor].Name)];
            }
        }

        throw new ArgumentException($"No answer is named '{answer}'; there are {string.Join(", ", this.Answers.Select(static one => $"'{one}'"))}.", nameof(answer));
    }

    /// <summary>One of some slices that together are the whole.</summary>
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

        long first = (long)((Int128)this.Rows * slice / slices);
        return new SweepSlice(first, (long)((Int128)this.Rows * (slice + 1) / slices) - first);
    }

    /// <summary>Works out some rows, factor by factor.</summary>
    /// <param name="firstRow">The first row, from 0.</param>
    /// <param name="rows">How many.</param>
    /// <exception cref="ArgumentOutOfRangeException">The grid does not have these rows.</exception>
    public StudyRows Work(long firstRow, int rows)
    {
        this.Check(firstRow, rows);
        var all = new AnswerBlock(this.Answers, rows);
        this.WorkInto(all, firstRow, rows);
        return this.WithInputs(all, firstRow, rows);
    }

    /// <summary>Which level of a factor a row has, from 0.</summary>
    /// <param name="factor">Name of the factor.</param>
    /// <param name="row">The row, from 0.</param>
    /// <exception cref="ArgumentException">No factor has that name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The grid does not have this row.</exception>
    public int LevelOf(string factor, long row)
    {
        this.Check(row, 1);
        for (int i = 0; i < this.Factors.Count; i++)
        {
            if (this.Factors[i].Name == factor)
            {
                return this.places.Level(i, row);
            }
        }

        throw new ArgumentException($"No factor is named '{factor}'; there are {string.Join(", ", this.Factors.Select(static one => $"'{one.Name}'"))}.", nameof(factor));
    }

    /// <summary>Works out every stage for every row, as if all depended on all factors: to check with, and to compare times.</summary>
    /// <param name="firstRow">The first row, from 0.</param>
    /// <param name="rows">How many.</param>
    /// <exception cref="ArgumentOutOfRangeException">The grid does not have these rows.</exception>
    public StudyRows WorkRowByRow(long firstRow, int rows)
    {
        this.Check(firstRow, rows);
        var all = new AnswerBlock(this.Answers, rows);
        this.WorkRowByRowInto(all, firstRow, rows);
        return this.WithInputs(all, firstRow, rows);
    }

    /// <summary>Works out rows the plain way into a block that is there.</summary>
    internal void WorkRowByRowInto(AnswerBlock all, long firstRow, int rows)
    {
        new GridWork(this.places, this.With(this.inputs, this.Stages)).Fill(all, firstRow, 0, rows);
        all.Show(rows);
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
    /// The study has no such answer, the summary is for the rows of another design, or the slice does not lie in the study.
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
    /// A summary names no answer of this study, or is for the rows of another design, or the slice does not lie in it.
    /// </exception>
    /// <exception cref="OperationCanceledException">The run was ended early.</exception>
    public void Run(
        IEnumerable<AnswerSummary> summaries, SweepSlice? slice = null, int threads = 1, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(summaries);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        AnswerSummary[] wanted = [.. summaries];
        var names = new AnswerBlock(this.Answers, 0);
        Array.ForEach(wanted, one => one.Summary.CheckRows(Design, this.Inputs));
        int[] columns = [.. wanted.Select(one => names.IndexOf(one.Answer))];
        string[] shown = [.. wanted.Select(static one => one.Answer).Distinct(StringComparer.Ordinal)];
        SweepSlice part = slice ?? new SweepSlice(0, this.Rows);
        if (part.FirstRow > this.Rows - part.Rows)
        {
            throw new ArgumentException($"Not a slice of this study, which has {this.Rows} rows.", nameof(slice));
        }

        cancellation.ThrowIfCancellationRequested();
        _ = this.kept.Value;
        try
        {
            _ = Parallel.For(
                0L,
                (part.Rows + GridWork.Block - 1) / GridWork.Block,
                new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation },
                () => (Work: this.Worker(), All: new AnswerBlock(this.Answers, GridWork.Block), Own: wanted.Select(static one => one.Summary.Fresh()).ToArray()),
                (block, _, worker) =>
                {
                    long first = part.FirstRow + (block * GridWork.Block);
                    int count = (int)Math.Min(GridWork.Block, part.FirstRow + part.Rows - first);
                    worker.Work.Fill(worker.All, first, 0, count);
                    this.Show(worker.All, first, count, shown, worker.Work);
                    for (int i = 0; i < columns.Length; i++)
                    {
                        worker.Own[i].Add(first, worker.All[columns[i]]);
                    }

                    return worker;
                },
                worker =>
                {
                    lock (wanted)
                    {
                        for (int i = 0; i < wanted.Length; i++)
                        {
                            wanted[i].Summary.Join(worker.Own[i]);
                        }
                    }
                });
        }
        catch (AggregateException several) when (several.InnerExceptions.Count >= 1)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }
    }

    /// <summary>Factors and stages in a few words.</summary>
    public override string ToString() => $"{string.Join(" by ", this.Factors)}: {string.Join("; ", this.Stages)}";

    /// <summary>The same into a block that is there already and holds so many rows.</summary>
    internal void WorkInto(AnswerBlock all, long firstRow, int rows)
    {
        this.Worker().Fill(all, firstRow, 0, rows);
        this.Show(all, firstRow, rows, this.Answers);
    }

    private GridWork Worker() => new(
        this.places, this.With(this.kept.Value, [.. this.Stages.Where(stage => !this.kept.Value.ContainsKey(stage.Answers[0]))]));

    // Answers that are kept are not with the rows yet.
    private void Show(AnswerBlock all, long firstRow, int rows, IEnumerable<string> answers, GridWork? work = null)
    {
        all.Show(rows);
        GridWork copies = work ?? new GridWork(this.places, []);
        foreach (string answer in answers)
        {
            if (this.kept.Value.TryGetValue(answer, out GridSource? source))
            {
                copies.Copy(source, firstRow, all[answer]);
            }
        }
    }

    private void Check(long firstRow, int rows)
    {
        if (firstRow < 0 || firstRow > this.Rows)
        {
            throw new ArgumentOutOfRangeException(nameof(firstRow), firstRow, $"The grid has rows 0 to {this.Rows - 1}.");
        }

        if (rows < 0 || rows > this.Rows - firstRow)
        {
            throw new ArgumentOutOfRangeException(nameof(rows), rows, $"From row {firstRow} on the grid has {this.Rows - firstRow} rows.");
        }
    }

    private StudyRows WithInputs(AnswerBlock answers, long firstRow, int rows)
    {
        var labels = this.Factors.Select((factor, i) => (factor, i)).Where(static one => one.factor.LevelNames.Count > 0).Select(one =>
            KeyValuePair.Create(
                one.factor.Name,
                Enumerable.Range(0, rows).Select(row => one.factor.LevelNames[this.places.Level(one.i, firstRow + row)]).ToArray()));
        var block = new SweepBlock(this.Inputs, rows) { FirstRow = firstRow, Rows = rows };
        int place = 0;
        for (int factor = 0; factor < this.Factors.Count; factor++)
        {
            for (int input = 0; input < this.Factors[factor].Inputs.Count; input++, place++)
            {
                double[] levels = this.Factors[factor].Column(input);
                Span<double> column = block.Column(place);
                for (int row = 0; row < rows; row++)
                {
                    column[row] = levels[this.places.Level(factor, firstRow + row)];
                }
            }
        }

        return new StudyRows(block, answers, [.. labels]);
    }

    // Stages with what they need: known numbers where there are some, else answers that the rows hold.
    private (GridStage Stage, GridSource[] Needs)[] With(Dictionary<string, GridSource> known, IEnumerable<GridStage> stages)
    {
        var names = new AnswerBlock(this.Answers, 0);
        return [.. stages.Select(stage => (stage, stage.Needs.Select(need =>
            known.TryGetValue(need, out GridSource? source) ? source : new GridSource(null, [], names.IndexOf(need))).ToArray()))];
    }

    private Dictionary<string, GridSource> Keep()
    {
        var known = new Dictionary<string, GridSource>(this.inputs, StringComparer.Ordinal);
        for (int i = 0; i < this.Stages.Count; i++)
        {
            GridStage stage = this.Stages[i];
            int[] factors = this.factorsOf[i];
            if (factors.Length == this.Factors.Count || stage.Needs.Any(need => !known.ContainsKey(need)))
            {
                continue;
            }

            var own = new GridPlaces(this.Factors, factors);
            if (own.Rows > MostKept)
            {
                continue;
            }

            var table = new AnswerBlock(stage.Answers, (int)own.Rows);
            new GridWork(own, this.With(known, [stage])).Fill(table, 0, 0, (int)own.Rows);
            for (int answer = 0; answer < stage.Answers.Count; answer++)
            {
                known.Add(stage.Answers[answer], new GridSource(table.Memory(answer), factors, 0));
            }
        }

        return known;
    }
}
