using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How what stays clear of tape is read and written. Margins are always stated: a default of the library may change.</summary>
internal static class StayClearForm
{
    internal static StayClear? Read(FormReader reader)
    {
        StayClearKind kind = reader.Word("what", JobWords.StayClearKinds);
        string shape = reader.Word("shape", "rectangle", "round", "band");
        int count = reader.OptionalCount("count", 1);
        Length margin = reader.Length("margin");
        switch (shape)
        {
            case "rectangle":
                Length width = reader.Length("width");
                Length height = reader.Length("height");
                return reader.Make(() => StayClear.Spot(kind, width, height, count, margin));
            case "round":
                Length diameter = reader.Length("diameter");
                return reader.Make(() => StayClear.RoundSpot(kind, diameter, count, margin));
            default:
                Length length = reader.Length("length");
                Length? middle = reader.OptionalLength("middle");
                return reader.Make(() =>
                {
                    StayClear band = StayClear.Band(kind, length, count, margin);
                    return middle is { } at ? band.At(at) : band;
                });
        }
    }

    internal static void Write(FormWriter writer, StayClear clear)
    {
        writer.Word("what", clear.Kind, JobWords.StayClearKinds);
        writer.Text("shape", clear.IsBand ? "band" : clear.IsRound ? "round" : "rectangle");
        writer.Length(clear.IsBand ? "length" : clear.IsRound ? "diameter" : "width", clear.Width);
        if (clear is { IsRound: false, Height: { } height })
        {
            writer.Length("height", height);
        }

        if (clear.Count != 1)
        {
            writer.Count("count", clear.Count);
        }

        writer.Length("margin", clear.Margin);
        if (clear.Middle is { } middle)
        {
            writer.Length("middle", middle);
        }
    }
}
