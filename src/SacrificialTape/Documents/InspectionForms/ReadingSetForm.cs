using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>How a set of readings is read and written.</summary>
internal static class ReadingSetForm
{
    internal static ReadingSet? Read(FormReader reader)
    {
        string place = reader.Text("place");
        reader.Context.Enter(reader.Node, "sets", place);
        DateOnly? on = reader.Members.Day("on", "the day the readings were taken");
        string by = reader.Text("by");
        string instrument = reader.Text("instrument");
        Foil foil = reader.Object("foil", StockForm.ReadFoil);
        double significance = reader.Number("significance");
        ValueList<FoilReading> readings = reader.List("readings", FoilReadingForm.Read);
        reader.Context.Leave();

        // Each reading that is flagged is taken out and all are looked at anew.
        reader.CountSteps((double)readings.Count * readings.Count);
        return reader.Make(() => new ReadingSet(
            place, on!.Value, by, instrument, new FoilReadings(foil, readings, FormReader.At("significance", () => Probability.FromFraction(significance)))));
    }

    internal static void Write(FormWriter writer, ReadingSet set)
    {
        writer.Text("place", set.Place);
        writer.Day("on", set.TakenOn);
        writer.Text("by", set.By);
        writer.Text("instrument", set.Instrument);
        writer.Object("foil", set.Readings.Foil, StockForm.WriteFoil);
        writer.Number("significance", set.Readings.Significance.Fraction);
        writer.List("readings", set.Readings.Readings, FoilReadingForm.Write);
    }
}
