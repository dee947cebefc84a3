using SacrificialTape.Surfaces;
using UnitsNet;

namespace PlantSurvey;

/// <summary>The cells of a shape, read and found to hold what they should.</summary>
internal sealed class ShapeCells(Dictionary<string, double> numbers, Dictionary<string, string> texts)
{
    internal bool Has(string column) => numbers.ContainsKey(column) || texts.ContainsKey(column);

    internal string Text(string column) => texts[column];

    internal Length Mm(string column) => Length.FromMillimeters(this.Number(column));

    /// <summary>A length that is zero where the cell is empty.</summary>
    internal Length MmOrNone(string column) => Length.FromMillimeters(numbers.GetValueOrDefault(column));

    internal Length Metres(string column) => Length.FromMeters(this.Number(column));

    internal Angle Degrees(string column) => Angle.FromDegrees(this.Number(column));

    internal double Number(string column) => numbers.TryGetValue(column, out double number)
        ? number
        : throw new CellException(column, "The cell is empty; without it the shape is not known.");

    /// <summary>A count; a cell with a broken number, or none in an optional cell, is refused or zero.</summary>
    internal int Whole(string column)
    {
        double number = numbers.GetValueOrDefault(column);
        return number == Math.Floor(number) && Math.Abs(number) < 1e6
            ? (int)number
            : throw new CellException(column, $"{number} is not a whole number.");
    }

    /// <summary>A nominal size by its name; null for a size given by its outside diameter.</summary>
    internal PipeSize? Nominal(string column)
    {
        string text = this.Text(column);
        if (text.StartsWith(OutsideDiameter.Mark, StringComparison.Ordinal))
        {
            return null;
        }

        try
        {
            return PipeSize.Parse(text);
        }
        catch (ArgumentException refused)
        {
            throw new CellException(column, CsvRow.FirstLine(refused));
        }
    }

    internal Length Diameter(string column) =>
        this.Nominal(column)?.OutsideDiameter ?? OutsideDiameter.Parse(this.Text(column), column);

    /// <summary>Whether a head is stated by its inside; then its wall counts, else it must not be stated.</summary>
    internal bool ByInside()
    {
        bool inside = this.Has("inside_mm");
        return (inside, this.Has("outside_mm"), this.Has("wall_mm")) switch
        {
            (true, true, _) => throw new CellException("inside_mm", "Both an inside and an outside diameter are stated; keep the one that was measured."),
            (false, _, true) => throw new CellException("wall_mm", "The wall counts with an inside diameter only; leave the cell empty."),
            _ => inside,
        };
    }
}
