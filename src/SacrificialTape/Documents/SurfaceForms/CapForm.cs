using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a cap is read and written: by its size where its length is that of the table, or by diameter and straight flange.</summary>
internal static class CapForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<Cap>("cap", Read, Write);

    private static Cap? Read(FormReader reader)
    {
        if (reader.Has("size"))
        {
            PipeSize size = PipeSizeText.Read(reader, "size");
            return reader.Make(() => Cap.FromSize(size));
        }

        Length outsideDiameter = reader.Length("outsideDiameter");
        if (reader.Has("overallLength"))
        {
            Length overallLength = reader.Length("overallLength");
            return reader.Make(() => Cap.FromOutside(outsideDiameter, overallLength));
        }

        Length straightFlange = reader.Length("straightFlange");
        return reader.Make(() => Cap.FromStraightFlange(outsideDiameter, straightFlange));
    }

    // The overall length is a sum that would not come back to the last bit.
    private static void Write(FormWriter writer, Cap cap)
    {
        if (cap.FormBasis is not null)
        {
            writer.Text("size", PipeSizeText.OfAsme(cap.OutsideDiameterMm, writer.Place));
            return;
        }

        writer.Length("outsideDiameter", cap.OutsideDiameter);
        writer.Length("straightFlange", cap.StraightFlange);
    }
}
