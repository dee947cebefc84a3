using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using UnitsNet;

namespace PlantSurvey;

/// <summary>The strips on stock: stock.csv.</summary>
internal static class StockReader
{
    private const string File = "stock.csv";

    private static readonly string[] Columns =
        ["stock", "foil_um", "foil_tolerance_um", "adhesive_um", "facing_um", "width_mm", "roll_m"];

    internal static IReadOnlyDictionary<string, StripStock>? Read(string folder, TakeOffChoices? takeOff, List<SurveyFault> faults)
    {
        CsvTable? table = CsvTable.Read(folder, File, Columns, [], faults);
        if (table is null)
        {
            return null;
        }

        var stock = new Dictionary<string, StripStock>(StringComparer.Ordinal);
        foreach (CsvRow row in table.Rows)
        {
            string name = row.Text("stock");
            StripStock? strip = Strip(row);
            if (strip is not null && takeOff is not null && strip.RollLength.Meters < 2 * takeOff.ShortestPiece.Meters)
            {
                row.Fault("roll_m", FormattableString.Invariant($"A roll of {strip.RollLength.Meters} m is shorter than two of the shortest pieces worth splicing in, {takeOff.ShortestPiece.Meters} m each (choices.csv, shortest_piece_m)."));
            }

            if (strip is not null && !stock.TryAdd(name, strip))
            {
                row.Fault("stock", $"'{name}' stands twice.");
            }
        }

        return stock;
    }

    private static StripStock? Strip(CsvRow row)
    {
        double foil = row.Number("foil_um");
        double tolerance = row.NumberOr("foil_tolerance_um", 0);
        double adhesive = row.Number("adhesive_um");
        double? facing = row.OptionalNumber("facing_um");
        double width = row.Number("width_mm");
        double roll = row.Number("roll_m");
        if (row.Faulty)
        {
            return null;
        }

        Foil zinc = row.Try("foil_um", () => new Foil(Length.FromMicrometers(foil), Length.FromMicrometers(tolerance)));
        Adhesive glue = row.Try("adhesive_um", () => new Adhesive(Length.FromMicrometers(adhesive)));
        FacingFilm? film = facing is { } um ? row.Try("facing_um", () => new FacingFilm(Length.FromMicrometers(um))) : null;
        return row.Faulty
            ? null
            : row.Try("width_mm", () => new StripStock(new Tape(zinc, glue, film), Length.FromMillimeters(width), Length.FromMeters(roll)));
    }
}
