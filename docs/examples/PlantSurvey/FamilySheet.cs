using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>A sheet for shapes that are told apart by the column 'shape', each with cells and lays of its own.</summary>
internal abstract class FamilySheet : ShapeSheet
{
    private readonly IReadOnlyDictionary<string, ShapeKind> kinds;
    private readonly string[] cells;

    private protected FamilySheet(params ShapeKind[] kinds)
    {
        this.kinds = kinds.ToDictionary(static kind => kind.Name);
        this.cells = [.. kinds.SelectMany(static kind => kind.Cells).Distinct()];
    }

    internal override IReadOnlyList<string> Columns => ["shape"];

    internal override IReadOnlyList<string> Optional => this.cells;

    internal override ILay? Lay(CsvRow row, StripStock? strip, LayChoices? options, ValueList<StayClear> bands)
    {
        if (row.Choice("shape", this.kinds) is not { } kind)
        {
            return null;
        }

        Surface? surface = kind.Read(row, this.cells);
        LayBy? maker = row.Choice("lay", kind.Lays);
        var lap = Length.FromMillimeters(row.Number("lap_mm"));
        if (bands.Count > 0)
        {
            row.Fault("clear", "Only straight pipe has bands all round; state a spot.");
        }

        return row.Faulty || surface is null || maker is null || strip is null || options is null
            ? null
            : row.Try("lap_mm", () => maker(surface, strip, lap, options), ("stock", "stock"), ("surface", "shape"));
    }
}
