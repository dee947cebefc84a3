using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a measured area is read and written.</summary>
internal static class MeasuredAreaForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<MeasuredArea>("measured area", Read, Write);

    private static MeasuredArea? Read(FormReader reader)
    {
        Area measured = reader.Area("measured");
        double allowance = reader.Number("allowance");
        string note = reader.Text("note");
        return reader.Make(() => new MeasuredArea(measured, FormReader.At("allowance", () => AreaAllowance.FromFraction(allowance)), note));
    }

    private static void Write(FormWriter writer, MeasuredArea area)
    {
        writer.Area("measured", area.Measured);
        writer.Number("allowance", area.Allowance.Fraction);
        writer.Text("note", area.Note);
    }
}
