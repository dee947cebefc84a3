using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a reading of foil is read and written: what the micrometer showed, or what the balance did.</summary>
internal static class FoilReadingForm
{
    internal static FoilReading? Read(FormReader reader)
    {
        string note = reader.Text("note");
        int layers = reader.OptionalCount("layers", 1);
        if (reader.Has("cleaned"))
        {
            double area = reader.Number("area", TradeUnit.SquareCentimeter);
            double cleaned = reader.Number("cleaned", TradeUnit.Gram);
            double density = reader.Number("density", TradeUnit.KilogramPerCubicMeter);
            return reader.Make(() => FoilReading.Weighed(
                Area.FromSquareCentimeters(area), Mass.FromGrams(cleaned), Mass.FromGrams(cleaned), note, Density.FromKilogramsPerCubicMeter(density), layers));
        }

        double together = reader.Number("together", TradeUnit.Micrometer);
        double leftOn = reader.Number("leftOn", TradeUnit.Micrometer);
        bool removed = reader.Flag("productsRemoved");
        return reader.Make(() => FoilReading.Measured(
            Length.FromMicrometers(together), new ReadingPreparation(removed, Length.FromMicrometers(leftOn), note), layers));
    }

    internal static void Write(FormWriter writer, FoilReading reading)
    {
        if (reading.TogetherUm is { } together)
        {
            writer.Number("together", together, TradeUnit.Micrometer);
            writer.Number("leftOn", reading.Preparation.LeftOnUm, TradeUnit.Micrometer);
            writer.Flag("productsRemoved", reading.Preparation.ProductsRemoved);
        }
        else
        {
            (double grams, double squareCm, double density) = reading.Weight;
            writer.Number("area", squareCm, TradeUnit.SquareCentimeter);
            writer.Number("cleaned", grams, TradeUnit.Gram);
            writer.Number("density", density, TradeUnit.KilogramPerCubicMeter);
        }

        if (reading.Layers != 1)
        {
            writer.Count("layers", reading.Layers);
        }

        writer.Text("note", reading.Preparation.Note);
    }
}
