using SacrificialTape.Inspection;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>Damage found on tape that is up: defects.csv, if the folder has it. What is cut out round each, and where.</summary>
internal sealed class DefectSheet
{
    internal const string File = "defects.csv";

    private static readonly string[] Columns = ["inspection", "name", "shape", "length_mm", "on"];

    private static readonly Dictionary<string, bool> Shapes = new() { ["rectangle"] = false, ["ellipse"] = false, ["circle"] = true };

    private static readonly Dictionary<string, Func<Length, PatchPlace>?> Places = new()
    {
        ["flat"] = null,
        ["pipe"] = PatchPlace.OnPipe,
        ["edge"] = PatchPlace.OverEdge,
    };

    private readonly Dictionary<string, List<Damage>> byInspection = new(StringComparer.Ordinal);

    internal static DefectSheet Read(string folder, Dictionary<string, (CsvRow Row, InspectionTerms? Terms)> inspections, List<SurveyFault> faults)
    {
        var sheet = new DefectSheet();
        if (!System.IO.File.Exists(Path.Combine(folder, File))
            || CsvTable.Read(folder, File, Columns, ["width_mm", "across_mm", "along_mm", "size_mm", "turn_deg"], faults) is not { } table)
        {
            return sheet;
        }

        foreach (CsvRow row in table.Rows)
        {
            string inspection = row.Text("inspection");
            if (inspection.Length > 0 && !inspections.ContainsKey(inspection))
            {
                row.Fault("inspection", $"{InspectionSheet.File} has no inspection '{inspection}'.");
            }

            string name = row.Text("name");
            CutOut? cutOut = Shape(row);
            PatchPlace? place = Place(row);
            if (row.Faulty || cutOut is null || place is null || Positioned(row, new Damage(name, cutOut, place)) is not { } damage)
            {
                continue;
            }

            if (!sheet.byInspection.TryGetValue(inspection, out List<Damage>? damages))
            {
                sheet.byInspection.Add(inspection, damages = []);
            }

            if (damages.Exists(one => one.Name == name))
            {
                row.Fault("name", $"'{name}' stands twice in this inspection.");
            }

            damages.Add(damage);
        }

        return sheet;
    }

    internal IReadOnlyList<Damage> Of(string inspection) => this.byInspection.GetValueOrDefault(inspection) ?? [];

    private static CutOut? Shape(CsvRow row)
    {
        bool circle = row.Choice("shape", Shapes);
        var length = Length.FromMillimeters(row.Number("length_mm"));
        if (circle)
        {
            row.MustBeEmpty("width_mm", "A circle has one measure, its diameter in length_mm; leave the cell empty.");
            return row.Faulty ? null : row.Try("length_mm", () => CutOut.Circle(length));
        }

        var width = Length.FromMillimeters(row.Number("width_mm"));
        bool rectangle = row.TextOr("shape", string.Empty) == "rectangle";
        return row.Faulty ? null : row.Try("length_mm", () => rectangle ? CutOut.Rectangle(length, width) : CutOut.Ellipse(length, width), ("width", "width_mm"));
    }

    private static PatchPlace? Place(CsvRow row)
    {
        Func<Length, PatchPlace>? on = row.Choice("on", Places);
        if (row.TextOr("on", string.Empty) == "flat")
        {
            row.MustBeEmpty("size_mm", "Flat steel has none; leave the cell empty.");
            return row.Faulty ? null : PatchPlace.Flat;
        }

        double size = row.Number("size_mm");
        return row.Faulty ? null : row.Try("size_mm", () => on!(Length.FromMillimeters(size)));
    }

    // Damage without a place is repaired all the same, but not compared with its neighbours.
    private static Damage? Positioned(CsvRow row, Damage damage)
    {
        double? along = row.OptionalNumber("along_mm");
        double? across = row.OptionalNumber("across_mm");
        double turn = row.NumberOr("turn_deg", 0);
        if (along is null != across is null)
        {
            row.Fault(along is null ? "along_mm" : "across_mm", "State both along and across, or neither.");
        }

        if (row.Faulty || along is not { } x || across is not { } y)
        {
            return row.Faulty ? null : damage;
        }

        return row.Try(
            "along_mm", () => damage.At(Length.FromMillimeters(x), Length.FromMillimeters(y), Angle.FromDegrees(turn)), ("across", "across_mm"), ("turn", "turn_deg"));
    }
}
