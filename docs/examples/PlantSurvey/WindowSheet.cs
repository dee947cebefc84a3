using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>Contact windows at their places, for painted lines whose cell says "places": windows.csv, if the folder has it.</summary>
internal sealed class WindowSheet
{
    internal const string File = "windows.csv";

    private static readonly string[] Columns = ["line", "shape", "along_mm", "around_mm", "length_mm"];

    private static readonly Dictionary<string, bool> Shapes = new() { ["disc"] = true, ["rectangle"] = false };

    private readonly Dictionary<string, List<(CsvRow Row, ContactWindow Window)>> byLine = new(StringComparer.Ordinal);
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    internal static WindowSheet Read(string folder, List<SurveyFault> faults)
    {
        var sheet = new WindowSheet();
        if (!System.IO.File.Exists(Path.Combine(folder, File)) || CsvTable.Read(folder, File, Columns, ["width_mm"], faults) is not { } table)
        {
            return sheet;
        }

        foreach (CsvRow row in table.Rows)
        {
            string line = row.Text("line");
            ContactWindow? window = Window(row);
            if (!sheet.byLine.TryGetValue(line, out List<(CsvRow Row, ContactWindow Window)>? windows))
            {
                sheet.byLine.Add(line, windows = []);
            }

            if (!row.Faulty && window is not null)
            {
                windows.Add((row, window));
            }
        }

        return sheet;
    }

    /// <summary>The windows of a line on the surface of its lay; null, with a fault, where they do not fit or there are none.</summary>
    internal WindowLayout? LayOut(CsvRow row, string tag, ILay lay)
    {
        this.used.Add(tag);
        if (!this.byLine.TryGetValue(tag, out List<(CsvRow Row, ContactWindow Window)>? windows))
        {
            return row.Refuse<WindowLayout>("windows", $"{File} holds no window of this line.");
        }

        if (!UnrolledSurface.TryUnroll(lay.Surface, out UnrolledSurface? surface))
        {
            return row.Refuse<WindowLayout>("windows", $"{lay.Surface.Description} has no unrolled form on which windows could have places; state their number.");
        }

        return row.Try("windows", () => new WindowLayout(surface, new ValueList<ContactWindow>(windows.Select(static one => one.Window))));
    }

    /// <summary>Windows of lines that do not ask for them are a slip of the survey.</summary>
    internal void Close()
    {
        foreach ((string line, List<(CsvRow Row, ContactWindow Window)> windows) in this.byLine.Where(pair => !this.used.Contains(pair.Key)))
        {
            windows.FirstOrDefault().Row?.Fault("line", $"No line '{line}' of the survey has 'places' in its cell 'windows'.");
        }
    }

    private static ContactWindow? Window(CsvRow row)
    {
        bool disc = row.Choice("shape", Shapes);
        var along = Length.FromMillimeters(row.Number("along_mm"));
        var around = Length.FromMillimeters(row.Number("around_mm"));
        var length = Length.FromMillimeters(row.Number("length_mm"));
        if (disc)
        {
            row.MustBeEmpty("width_mm", "A disc has one measure, its diameter; leave the cell empty.");
            return row.Faulty ? null : row.Try("length_mm", () => ContactWindow.Disc(along, around, length), ("along", "along_mm"), ("around", "around_mm"));
        }

        var width = Length.FromMillimeters(row.Number("width_mm"));
        return row.Faulty ? null : row.Try(
            "length_mm", () => ContactWindow.Rectangle(along, around, length, width), ("along", "along_mm"), ("around", "around_mm"), ("extentAround", "width_mm"));
    }
}
