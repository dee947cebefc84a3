using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps;

/// <summary>The answers of some consecutive rows, column by column.</summary>
public sealed class AnswerBlock
{
    private readonly double[][] columns;
    private int first;

    internal AnswerBlock(ValueList<string> names, int capacity)
    {
        this.Names = names;
        this.columns = new double[names.Count][];
        for (int i = 0; i < this.columns.Length; i++)
        {
            this.columns[i] = new double[capacity];
        }
    }

    /// <summary>Some of the answers of another block, in the same memory.</summary>
    internal AnswerBlock(ValueList<string> names, AnswerBlock whole)
    {
        this.Names = names;
        this.columns = [.. names.Select(name => whole.columns[whole.IndexOf(name)])];
    }

    /// <summary>The names of the answers.</summary>
    public ValueList<string> Names { get; }

    /// <summary>How many rows there are.</summary>
    public int Rows { get; private set; }

    /// <summary>The column of an answer.</summary>
    /// <param name="answer">Where the answer stands, from 0.</param>
    public Span<double> this[int answer] => this.columns[answer].AsSpan(this.first, this.Rows);

    /// <summary>The column of an answer.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ArgumentException">No answer has that name.</exception>
    public Span<double> this[string name] => this[this.IndexOf(name)];

    internal int IndexOf(string name)
    {
        for (int i = 0; i < this.Names.Count; i++)
        {
            if (this.Names[i] == name)
            {
                return i;
            }
        }

        throw new ArgumentException($"No answer is named '{name}'; there are {string.Join(", ", this.Names.Select(static one => $"'{one}'"))}.", nameof(name));
    }

    internal void Begin(int rows) => this.Begin(0, rows);

    /// <summary>Begins with rows that stand somewhere in the memory.</summary>
    internal void Begin(int firstPlace, int rows)
    {
        this.first = firstPlace;
        this.Rows = rows;
        foreach (double[] column in this.columns)
        {
            // What a model leaves out must not pass for an answer.
            column.AsSpan(firstPlace, rows).Fill(double.NaN);
        }
    }

    /// <summary>Shows rows that are there already.</summary>
    internal void Show(int rows)
    {
        this.first = 0;
        this.Rows = rows;
    }

    /// <summary>All of the memory behind an answer.</summary>
    internal double[] Memory(int answer) => this.columns[answer];
}
