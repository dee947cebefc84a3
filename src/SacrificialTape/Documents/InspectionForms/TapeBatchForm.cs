using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a batch of tape is read and written. What is not known of it is left out.</summary>
internal static class TapeBatchForm
{
    internal static TapeBatch? Read(FormReader reader)
    {
        string? number = reader.OptionalText("number");
        DateOnly? madeOn = reader.Members.OptionalDay("madeOn");
        DateOnly? useBefore = reader.Members.OptionalDay("useBefore");
        TapeBatchStorage? allowed = reader.OptionalObject("allowedStorage", ReadStorage);
        TapeBatchStorage? stored = reader.OptionalObject("stored", ReadStorage);
        return reader.Make(() => new TapeBatch(number, madeOn, useBefore, allowed, stored));
    }

    internal static void Write(FormWriter writer, TapeBatch batch)
    {
        writer.OptionalText("number", batch.Number);
        if (batch.MadeOn is { } made)
        {
            writer.Day("madeOn", made);
        }

        if (batch.UseBefore is { } last)
        {
            writer.Day("useBefore", last);
        }

        if (batch.AllowedStorage is { } allowed)
        {
            writer.Object("allowedStorage", allowed, WriteStorage);
        }

        if (batch.Stored is { } stored)
        {
            writer.Object("stored", stored, WriteStorage);
        }
    }

    private static TapeBatchStorage? ReadStorage(FormReader reader)
    {
        double lowest = reader.Number("lowest", TradeUnit.DegreeCelsius);
        double highest = reader.Number("highest", TradeUnit.DegreeCelsius);
        return reader.Make(() => new TapeBatchStorage(Temperature.FromDegreesCelsius(lowest), Temperature.FromDegreesCelsius(highest)));
    }

    private static void WriteStorage(FormWriter writer, TapeBatchStorage storage)
    {
        writer.Number("lowest", storage.Low, TradeUnit.DegreeCelsius);
        writer.Number("highest", storage.High, TradeUnit.DegreeCelsius);
    }
}
