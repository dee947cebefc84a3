using System.Globalization;
using Spectre.Console;

namespace PlantSurvey;

/// <summary>How the tables of the report look.</summary>
internal static class Sheets
{
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
