using System.Globalization;

namespace PlantSurvey;

/// <summary>One row of a CSV file. Its readers note a fault with its place and go on, so that one run shows all faults.</summary>
internal sealed class CsvRow(
    string file, int line, IReadOnlyList<string> header, Dictionary<string, string> cells, List<SurveyFault> faults)
{
    private const NumberStyles Strict = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    internal bool Faulty { get; private set; }

    internal string Text(string column)
    {
        string text = this.Cell(column);
        if (text.Length == 0)
        {
            this.Fault(column, "The cell is empty.");
        }

        return text;
    }

    internal string TextOr(string column, string otherwise) => this.Cell(column) is { Length: > 0 } text ? text : otherwise;

    internal DateOnly Day(string column)
    {
        string text = this.Text(column);
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) && text.Length > 0)
        {
            this.Fault(column, $"'{text}' is not a day such as 2026-05-04.");
        }

        return day;
    }

    internal double Number(string column) => this.NumberOr(column, null) ?? 0;

    /// <summary>An empty cell is null where that is allowed.</summary>
    internal double? OptionalNumber(string column) => this.Cell(column).Length == 0 ? null : this.NumberOr(column, null);

    internal double NumberOr(string column, double otherwise) => this.NumberOr(column, (double?)otherwise) ?? otherwise;

    internal int WholeOr(string column, int otherwise)
    {
        string text = this.Cell(column);
        if (text.Length == 0)
        {
            return otherwise;
        }

        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int whole))
        {
            this.Fault(column, $"'{text}' is not a whole number of zero or more.");
        }

        return whole;
    }

    internal T Choice<T>(string column, IReadOnlyDictionary<string, T> choices, string? otherwise = null)
    {
        string text = otherwise is null ? this.Text(column) : this.TextOr(column, otherwise);
        if (choices.TryGetValue(text, out T? value))
        {
            return value;
        }

        if (text.Length > 0)
        {
            this.Fault(column, $"'{text}' is not one of {string.Join(", ", choices.Keys)}.");
        }

        return default!;
    }

    /// <summary>Makes something of the cells; if the library refuses, the fault stands at the cell to blame.</summary>
    /// <param name="column">The cell to blame as a rule.</param>
    /// <param name="make">What to make.</param>
    /// <param name="blame">Other cells to blame, by the argument that the library refuses.</param>
    internal T Try<T>(string column, Func<T> make, params (string Argument, string Column)[] blame)
        where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            (string Argument, string Column) named = blame.FirstOrDefault(one => one.Argument == refused.ParamName);
            this.Fault(named.Column ?? column, FirstLine(refused));
            return null!;
        }
        catch (CellException refused)
        {
            this.Fault(refused.Column, refused.Message);
            return null!;
        }
    }

    /// <summary>A cell that would be passed over in silence is a slip of the survey.</summary>
    internal void MustBeEmpty(string column, string why)
    {
        if (this.Cell(column).Length > 0)
        {
            this.Fault(column, why);
        }
    }

    internal T? Refuse<T>(string column, string message)
        where T : class
    {
        this.Fault(column, message);
        return null;
    }

    internal void Fault(string column, string message)
    {
        this.Faulty = true;
        int place = header.TakeWhile(name => name != column).Count() + 1;
        faults.Add(new(file, line, place > header.Count
            ? $"column '{column}', which is not there"
            : $"column {place.ToString(CultureInfo.InvariantCulture)} '{column}'", message));
    }

    // The framework adds the parameter's name to the message; the place in the file says it better.
    internal static string FirstLine(ArgumentException refused)
    {
        string message = refused.Message;
        int parameter = message.IndexOf(" (Parameter ", StringComparison.Ordinal);
        return parameter < 0 ? message : message[..parameter];
    }

    // A column that may be left out counts as one of empty cells.
    private string Cell(string column) => cells.GetValueOrDefault(column, string.Empty);

    private double? NumberOr(string column, double? otherwise)
    {
        string text = this.Cell(column);
        if (text.Length == 0)
        {
            if (otherwise is null)
            {
                this.Fault(column, "The cell is empty; a number is expected.");
            }

            return otherwise;
        }

        if (double.TryParse(text, Strict, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number))
        {
            return number;
        }

        this.Fault(column, text.Contains(',', StringComparison.Ordinal)
            ? $"'{text}' has a comma. Write a decimal point and no thousands sign."
            : $"'{text}' is not a number.");
        return otherwise;
    }
}
