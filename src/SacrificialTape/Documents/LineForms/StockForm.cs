using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a strip is read and written: foil, adhesive and facing, width and length of a roll.</summary>
internal static class StockForm
{
    internal static StripStock? Read(FormReader reader)
    {
        Length width = reader.Length("width");
        Length rollLength = reader.Length("rollLength");
        Foil foil = reader.Object("foil", ReadFoil);
        Adhesive adhesive = reader.Object("adhesive", ReadAdhesive);
        FacingFilm? facing = reader.OptionalObject("facing", ReadFacing);
        return reader.Make(() => new StripStock(new Tape(foil, adhesive, facing), width, rollLength));
    }

    internal static void Write(FormWriter writer, StripStock stock)
    {
        writer.Length("width", stock.Width);
        writer.Length("rollLength", stock.RollLength);
        writer.Object("foil", stock.Tape.Foil, WriteFoil);
        writer.Object("adhesive", stock.Tape.Adhesive, WriteAdhesive);
        if (stock.Tape.Facing is { } facing)
        {
            writer.Object("facing", facing, static (writer, film) => writer.Length("thickness", film.Thickness));
        }
    }

    internal static Foil? ReadFoil(FormReader reader)
    {
        Length thickness = reader.Length("thickness");
        Length? tolerance = reader.OptionalLength("tolerance");
        double density = reader.Number("density", TradeUnit.KilogramPerCubicMeter);
        return reader.Make(() => new Foil(thickness, tolerance, Density.FromKilogramsPerCubicMeter(density)));
    }

    internal static void WriteFoil(FormWriter writer, Foil foil)
    {
        writer.Length("thickness", foil.Thickness);
        if (UnitConversions.Millimeters(foil.Tolerance) is not 0)
        {
            writer.Length("tolerance", foil.Tolerance);
        }

        writer.Number("density", foil.KilogramsPerCubicMeter, TradeUnit.KilogramPerCubicMeter);
    }

    private static Adhesive? ReadAdhesive(FormReader reader)
    {
        Length thickness = reader.Length("thickness");
        double? resistivity = reader.OptionalNumber("contactResistivity", TradeUnit.OhmSquareCentimeter);
        return reader.Make(() => new Adhesive(thickness, resistivity is { } value ? FormReader.At("contactResistivity", () => ContactResistivity.FromOhmSquareCentimeters(value)) : null));
    }

    private static void WriteAdhesive(FormWriter writer, Adhesive adhesive)
    {
        writer.Length("thickness", adhesive.Thickness);
        if (adhesive.ContactResistivity is { } resistivity)
        {
            writer.Number("contactResistivity", resistivity.OhmSquareCentimeters, TradeUnit.OhmSquareCentimeter);
        }
    }

    private static FacingFilm? ReadFacing(FormReader reader)
    {
        Length thickness = reader.Length("thickness");
        return reader.Make(() => new FacingFilm(thickness));
    }
}
