using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How the choices of the take-off are read and written: splices, and spare as one share or divided by its purpose.</summary>
internal static class TakeOffForm
{
    internal static TakeOffChoices? Read(FormReader reader)
    {
        Length spliceLap = reader.Length("spliceLap");
        Length shortestPiece = reader.Length("shortestPiece");
        if (reader.Has("spare"))
        {
            Spare spare = reader.Object("spare", ReadSpare);
            return reader.Make(() => new TakeOffChoices(spliceLap, shortestPiece, spare));
        }

        double contingency = reader.Number("contingency");
        return reader.Make(() => new TakeOffChoices(spliceLap, shortestPiece, FormReader.At("contingency", () => Contingency.FromFraction(contingency))));
    }

    internal static void Write(FormWriter writer, TakeOffChoices choices)
    {
        writer.Length("spliceLap", choices.SpliceLap);
        writer.Length("shortestPiece", choices.ShortestPiece);
        if (choices.Spare.IsDivided)
        {
            writer.Object("spare", choices.Spare, WriteSpare);
        }
        else
        {
            writer.Number("contingency", choices.Contingency.Fraction);
        }
    }

    private static Spare? ReadSpare(FormReader reader)
    {
        double spoilage = reader.Number("spoilage");
        Length trialWraps = reader.Length("trialWraps");
        double repairStock = reader.Number("repairStock");
        return reader.Make(() => new Spare(
            FormReader.At("spoilage", () => Contingency.FromFraction(spoilage)), trialWraps, FormReader.At("repairStock", () => Contingency.FromFraction(repairStock))));
    }

    private static void WriteSpare(FormWriter writer, Spare spare)
    {
        writer.Number("spoilage", spare.Spoilage!.Value.Fraction);
        writer.Length("trialWraps", spare.TrialWraps);
        writer.Number("repairStock", spare.RepairStock!.Value.Fraction);
    }
}
