using System.Reflection;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Files;

/// <summary>A study as a table: a column for each input and each answer, with its unit, and where the rows come from.</summary>
public sealed class StudyTable
{
    /// <summary>How many rows stay together in memory and in a file where nothing else is said.</summary>
    public const int UsualSliceRows = 131_072;

    // Enough rows to outweigh the start of a block, few enough for a near cache.
    private const int BlockRows = 4096;

    /// <summary>Makes a table of a study.</summary>
    /// <param name="study">The study.</param>
    /// <param name="model">Name and version of the model in your own words: code cannot tell what it is, so another model needs another name.</param>
    /// <param name="answerUnits">The unit of each answer, empty for a bare number.</param>
    /// <param name="sliceRows">How many rows make a slice, some more or less; one slice for each thread is in memory at a time.</param>
    /// <exception cref="ArgumentException">
    /// The model has no name, an answer has no unit, a unit belongs to no answer, or an input and an answer have one name.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The rows of a slice are outside their range.</exception>
    public StudyTable(Study study, string model, IReadOnlyDictionary<string, string> answerUnits, int sliceRows = UsualSliceRows)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentException.ThrowIfNullOrWhiteSpace(model);
        ArgumentNullException.ThrowIfNull(answerUnits);
        if (sliceRows is < 1 or > 4_194_304)
        {
            throw new ArgumentOutOfRangeException(nameof(sliceRows), sliceRows, "At least 1 and at most 4194304 rows.");
        }

        foreach (string answer in study.Answers)
        {
            if (!answerUnits.ContainsKey(answer))
            {
                throw new ArgumentException($"No unit for the answer '{answer}'; an empty one says that it is a bare number.", nameof(answerUnits));
            }

            if (study.Inputs.All.Any(input => input.Name == answer))
            {
                throw new ArgumentException($"'{answer}' is an input and an answer: a file needs a name for each column.", nameof(study));
            }
        }

        if (answerUnits.Keys.FirstOrDefault(name => !study.Answers.Contains(name)) is { } unknown)
        {
            throw new ArgumentException(
                $"No answer is named '{unknown}'; there are {string.Join(", ", study.Answers.Select(static one => $"'{one}'"))}.", nameof(answerUnits));
        }

        this.Study = study;
        this.Model = model;
        this.Columns = [.. study.Inputs.All.Select(static input => new FileColumn(input.Name, input.Unit)),
            .. study.Answers.Select(answer => new FileColumn(answer, answerUnits[answer]))];
        this.Slices = checked((int)Math.Min((study.Rows + sliceRows - 1) / sliceRows, study.Rows / study.RowsTogether));
        this.Identity = StudyIdentity.Of(this);
    }

    /// <summary>The study.</summary>
    public Study Study { get; }

    /// <summary>Name and version of the model.</summary>
    public string Model { get; }

    /// <summary>Inputs, then answers.</summary>
    public ValueList<FileColumn> Columns { get; }

    /// <summary>In how many slices it is worked out.</summary>
    public int Slices { get; }

    /// <summary>
    /// SHA-256 of what the study is: inputs to the last digit, design, seed, number of rows, answers, name of the model, version of
    /// the library, and the bits of some rows on this machine.
    /// </summary>
    public string Fingerprint => this.Identity.Fingerprint;

    /// <summary>Version of the library.</summary>
    public static string LibraryVersion =>
        typeof(Study).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    internal StudyIdentity Identity { get; }

    /// <summary>Model, study and number of slices in a few words.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.Model}: {this.Study}; {this.Slices} slice(s)");

    /// <summary>What a file says about itself.</summary>
    internal Dictionary<string, string> Metadata(long firstRow)
    {
        const string Ours = "sacrificialtape.";
        var said = new Dictionary<string, string>
        {
            [Ours + "model"] = this.Model,
            [Ours + "design"] = this.Study.Design.ToString()!,
            [Ours + "rows"] = Number(this.Study.Rows),
            [Ours + "first_row"] = Number(firstRow),
            [Ours + "version"] = LibraryVersion,
            [Ours + "fingerprint"] = this.Fingerprint,
        };
        if (this.Study.Design is ShareDesign { Seed: var seed })
        {
            said[Ours + "seed"] = seed.ToString(System.Globalization.CultureInfo.InvariantCulture);
        }

        // Column metadata is out of reach for many readers; the file's own is not.
        foreach (FileColumn column in this.Columns)
        {
            said[Ours + "unit." + column.Name] = column.Unit;
        }

        return said;

        static string Number(long value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    internal SweepSlice Slice(int slice) => this.Study.Slice(slice, this.Slices);

    internal double[][] Buffers()
    {
        long most = 0;
        for (int slice = 0; slice < this.Slices; slice++)
        {
            most = Math.Max(most, this.Slice(slice).Rows);
        }

        return [.. this.Columns.Select(_ => new double[most])];
    }

    /// <summary>Works out a slice, inputs and answers, block by block.</summary>
    internal void Work(SweepSlice part, double[][] columns, int threads, CancellationToken cancellation)
    {
        int block = Math.Max(BlockRows / this.Study.RowsTogether, 1) * this.Study.RowsTogether;
        int blocks = (int)((part.Rows + block - 1) / block);
        if (threads == 1)
        {
            for (int i = 0; i < blocks; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                One(i);
            }

            return;
        }

        Parallel.For(0, blocks, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation }, One);

        void One(int i)
        {
            int first = i * block;
            StudyRows rows = this.Study.Work(part.FirstRow + first, (int)Math.Min(block, part.Rows - first));
            int inputs = this.Study.Inputs.Count;
            for (int column = 0; column < columns.Length; column++)
            {
                Span<double> into = columns[column].AsSpan(first);
                if (column < inputs)
                {
                    rows.Inputs[column].CopyTo(into);
                }
                else
                {
                    rows.Answers[column - inputs].CopyTo(into);
                }
            }
        }
    }
}
