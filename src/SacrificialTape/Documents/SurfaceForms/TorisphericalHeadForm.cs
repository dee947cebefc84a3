using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a torispherical head is read and written: by its outside; a form that a standard names is stated beside its radii.</summary>
internal static class TorisphericalHeadForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<TorisphericalHead>("torispherical head", Read, Write);

    private static TorisphericalHead? Read(FormReader reader)
    {
        string? form = reader.Has("form") ? reader.Word("form", "Kloepper", "Korbbogen") : null;
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length straightFlange = reader.Length("straightFlange");
        if (form is not null && reader.Has("thickness"))
        {
            Length thickness = reader.Length("thickness");
            return reader.Make(() => form == "Kloepper"
                ? TorisphericalHead.Kloepper(outsideDiameter, thickness, straightFlange)
                : TorisphericalHead.Korbbogen(outsideDiameter, thickness, straightFlange));
        }

        Length crown = reader.Length("outsideCrownRadius");
        Length knuckle = reader.Length("outsideKnuckleRadius");
        return reader.Make(() =>
        {
            TorisphericalHead head = TorisphericalHead.FromOutside(outsideDiameter, crown, knuckle, straightFlange);
            return form is null ? head : head.OfForm(form == "Kloepper");
        });
    }

    private static void Write(FormWriter writer, TorisphericalHead head)
    {
        OutsideLimit.Hold(head.OutsideDiameterMm, writer.Place);
        if (head.IsKloepper is { } kloepper)
        {
            writer.Text("form", kloepper ? "Kloepper" : "Korbbogen");
        }

        writer.Length("outsideDiameter", head.OutsideDiameter);
        writer.Length("outsideCrownRadius", head.OutsideCrownRadius);
        writer.Length("outsideKnuckleRadius", head.OutsideKnuckleRadius);
        writer.Length("straightFlange", head.StraightFlange);
    }
}
