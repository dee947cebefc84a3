using SacrificialTape.Surfaces;
using UnitsNet;

namespace PlantSurvey;

/// <summary>The shape of a line: its size, and the length of a pipe or the angle and radius of a bend.</summary>
internal static class ShapeReader
{
    internal static StraightPipe? Pipe(CsvRow row)
    {
        double length = row.Number("length_m");
        Absent(row, "angle_deg", "pipe");
        Absent(row, "radius_mm", "pipe");
        (Length Diameter, PipeSize? _)? size = Size(row);
        return size is not { } read || row.Faulty
            ? null
            : row.Try("length_m", () => new StraightPipe(read.Diameter, Length.FromMeters(length)));
    }

    /// <summary>The radius is a number of mm, or LR or SR for the long or short radius of the size.</summary>
    internal static Bend? Bend(CsvRow row)
    {
        double angle = row.Number("angle_deg");
        string radius = row.Text("radius_mm");
        Absent(row, "length_m", "bend");
        (Length Diameter, PipeSize? Nominal)? size = Size(row);
        if (size is not { } read || row.Faulty)
        {
            return null;
        }

        var turn = Angle.FromDegrees(angle);
        if (radius is "LR" or "SR")
        {
            return read.Nominal is not { } nominal
                ? row.Refuse<Bend>("radius_mm", $"'{radius}' goes with a nominal size; state the radius in mm.")
                : row.Try("angle_deg", () => radius == "LR"
                    ? SacrificialTape.Surfaces.Bend.LongRadius(nominal, turn)
                    : SacrificialTape.Surfaces.Bend.ShortRadius(nominal, turn));
        }

        double mm = row.Number("radius_mm");
        return row.Faulty
            ? null
            : row.Try("radius_mm", () => new Bend(read.Diameter, Length.FromMillimeters(mm), turn));
    }

    internal static Length DiameterOf(Surface surface) => surface switch
    {
        StraightPipe pipe => pipe.OutsideDiameter,
        Bend bend => bend.OutsideDiameter,
        InterruptedPipe interrupted => interrupted.Pipe.OutsideDiameter,
        _ => throw new InvalidOperationException($"A {surface.GetType().Name} has no outside diameter here."),
    };

    private static void Absent(CsvRow row, string column, string shape) =>
        row.MustBeEmpty(column, $"A {shape} has none; leave the cell empty.");

    // Pipe that is not of a nominal size is entered by its outside diameter.
    private static (Length Diameter, PipeSize? Nominal)? Size(CsvRow row)
    {
        string size = row.Text("size");
        if (size.Length == 0)
        {
            return null;
        }

        if (!size.StartsWith(OutsideDiameter.Mark, StringComparison.Ordinal))
        {
            PipeSize? nominal = row.Try("size", () => PipeSize.Parse(size));
            return nominal is null ? null : (nominal.OutsideDiameter, nominal);
        }

        // The library says which diameters it takes.
        StraightPipe? probe = row.Try("size", () => new StraightPipe(OutsideDiameter.Parse(size, "size"), Length.FromMeters(1)));
        return probe is null ? null : (probe.OutsideDiameter, null);
    }
}
