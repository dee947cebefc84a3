using System.Globalization;
using System.Text;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps;

/// <summary>Some consecutive rows of a study with their answers.</summary>
/// <example><code source="SweepsPage.cs" region="table" /></example>
public sealed record StudyRows
{
    private const int ShownRows = 20;

    private readonly KeyValuePair<string, string[]>[] labels;

    internal StudyRows(SweepBlock inputs, AnswerBlock answers, params KeyValuePair<string, string[]>[] labels)
    {
        if (inputs.Rows != answers.Rows)
        {
            throw new ArgumentException($"{answers.Rows} rows of answers to {inputs.Rows} rows of inputs.", nameof(answers));
        }

        this.Inputs = inputs;
        this.Answers = answers;
        this.labels = labels;
    }

    /// <summary>The values of the inputs.</summary>
    public SweepBlock Inputs { get; }

    /// <summary>The answers.</summary>
    public AnswerBlock Answers { get; }

    /// <summary>How many rows there are.</summary>
    public int Rows => this.Inputs.Rows;

    /// <summary>
    /// All rows as a table of invariant text: a line of headings with units in brackets, then a line for each row, columns under one
    /// another. Factors of a grid whose levels have names come first.
    /// </summary>
    /// <param name="answerUnits">The units of answers by their names; left out, or for an answer that is not there, none is shown.</param>
    /// <exception cref="ArgumentException">A unit belongs to no answer.</exception>
    public string ToTable(IReadOnlyDictionary<string, string>? answerUnits = null) => this.Table(answerUnits, this.Rows);

    /// <summary>The first rows, up to 20, as the table of <see cref="ToTable"/>, and how many more there are.</summary>
    public override string ToString() => this.Rows <= ShownRows
        ? this.Table(null, this.Rows)
        : string.Create(CultureInfo.InvariantCulture, $"{this.Table(null, ShownRows)}\n... and {this.Rows - ShownRows} more rows");

    private static string Heading(string name, string? unit) => string.IsNullOrEmpty(unit) ? name : $"{name} [{unit}]";

    private string Table(IReadOnlyDictionary<string, string>? answerUnits, int rows)
    {
        if (answerUnits?.Keys.FirstOrDefault(name => !this.Answers.Names.Contains(name)) is { } unknown)
        {
            throw new ArgumentException(
                $"No answer is named '{unknown}'; there are {string.Join(", ", this.Answers.Names.Select(static one => $"'{one}'"))}.", nameof(answerUnits));
        }

        var columns = new List<string[]>();
        foreach ((string name, string[] texts) in this.labels)
        {
            columns.Add([name, .. texts.Take(rows)]);
        }

        for (int i = 0; i < this.Inputs.Inputs.Count; i++)
        {
            SweepInput input = this.Inputs.Inputs.All[i];
            columns.Add([Heading(input.Name, input.Unit), .. Numbers(this.Inputs[i][..rows])]);
        }

        for (int i = 0; i < this.Answers.Names.Count; i++)
        {
            columns.Add([Heading(this.Answers.Names[i], answerUnits?.GetValueOrDefault(this.Answers.Names[i])), .. Numbers(this.Answers[i][..rows])]);
        }

        int[] widths = [.. columns.Select(static column => column.Max(static text => text.Length))];
        var table = new StringBuilder();
        for (int row = 0; row <= rows; row++)
        {
            string line = string.Join("  ", columns.Select((column, i) =>
                i < this.labels.Length ? column[row].PadRight(widths[i]) : column[row].PadLeft(widths[i])));
            table.Append(row == 0 ? string.Empty : "\n").Append(line.TrimEnd());
        }

        return table.ToString();
    }

    private static string[] Numbers(ReadOnlySpan<double> values)
    {
        string[] texts = new string[values.Length];
        for (int i = 0; i < texts.Length; i++)
        {
            texts[i] = values[i].ToString("G5", CultureInfo.InvariantCulture);
        }

        return texts;
    }
}
