using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a flange is read and written: by its size where its dimensions are those of the table, or by its dimensions.</summary>
internal static class FlangeForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<Flange>("flange", Read, Write);

    private static Flange? Read(FormReader reader)
    {
        Length hubDiameter = reader.Length("hubDiameter");
        FlangeParts parts = Parts(reader);
        if (reader.Has("size"))
        {
            PipeSize size = PipeSizeText.Read(reader, "size");
            return reader.Make(() => new Flange(FlangeSize.Class150(size), hubDiameter, parts));
        }

        Length outsideDiameter = reader.Length("outsideDiameter");
        Length rimThickness = reader.Length("rimThickness");
        Length raisedFaceDiameter = reader.Length("raisedFaceDiameter");
        int boltHoles = reader.Count("boltHoles");
        Length boltHoleDiameter = reader.Length("boltHoleDiameter");
        return reader.Make(() => new Flange(outsideDiameter, rimThickness, hubDiameter, raisedFaceDiameter, boltHoles, boltHoleDiameter, parts));
    }

    private static void Write(FormWriter writer, Flange flange)
    {
        if (flange.Size is { } size)
        {
            writer.Text("size", "NPS " + size.Nps);
        }
        else
        {
            writer.Length("outsideDiameter", flange.OutsideDiameter);
            writer.Length("rimThickness", flange.RimThickness);
            writer.Length("raisedFaceDiameter", flange.RaisedFaceDiameter);
            writer.Count("boltHoles", flange.BoltHoles);
            writer.Length("boltHoleDiameter", flange.BoltHoleDiameter);
        }

        writer.Length("hubDiameter", flange.HubDiameter);
        writer.Texts("parts", [.. JobWords.FlangeParts.Where(pair => flange.Parts.HasFlag(pair.Value)).Select(static pair => pair.Word)]);
    }

    private static FlangeParts Parts(FormReader reader)
    {
        var parts = FlangeParts.None;
        ValueList<string> words = reader.Texts("parts");
        for (int i = 0; i < words.Count; i++)
        {
            FlangeParts part = JobWords.FlangeParts.FirstOrDefault(pair => pair.Word == words[i]).Value;
            if (part == FlangeParts.None || parts.HasFlag(part))
            {
                reader.Context.Faults.Add(reader.Node.Members["parts"].Items[i], part == FlangeParts.None
                    ? $"'{DocumentTree.Short(words[i])}' is not known. Expected {string.Join(", ", JobWords.FlangeParts.Select(static pair => $"'{pair.Word}'"))}."
                    : $"'{words[i]}' stands twice.");
            }

            parts |= part;
        }

        return parts;
    }
}
