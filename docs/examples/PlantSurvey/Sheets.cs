using System.Globalization;
using Spectre.Console;

namespace PlantSurvey;

/// <summary>How the tables of the report look.</summary>
internal static class Sheets
{
    private const int Columns = 150;

    /// <summary>Plain text of a fixed width: the same on a screen, on paper and in a file.</summary>
    internal static IAnsiConsole Console(StringWriter text)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(text),
        });
        console.Profile.Width = Columns;
        return console;
    }

    /// <summary>Hands the text on without the blanks at the ends of its lines.</summary>
    internal static void Print(StringWriter text, TextWriter output)
    {
        foreach (string line in text.ToString().Split('\n'))
        {
            output.WriteLine(line.TrimEnd());
        }
    }

    internal static Table Titled(string title) => new() { Title = new TableTitle("\n" + title), Border = TableBorder.Ascii2 };

    internal static void Head(Table table, params string[] names) => Add(table, Justify.Left, true, names);

    internal static void HeadRight(Table table, params string[] names) => Add(table, Justify.Right, true, names);

    /// <summary>A column of words, which may go over several rows.</summary>
    internal static void HeadWrapped(Table table, params string[] names) => Add(table, Justify.Left, false, names);

    internal static string Number(double number, int decimals) =>
        number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static void Add(Table table, Justify side, bool inOneRow, string[] names)
    {
        foreach (string name in names)
        {
            table.AddColumn(new TableColumn(name) { Alignment = side, NoWrap = inOneRow, Padding = new Padding(0, 0, 1, 0) });
        }
    }
}
