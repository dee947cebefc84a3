using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How welds of mitres are read and written.</summary>
internal static class MitreWeldsForm
{
    internal static Form<WeldSeam> Form { get; } = Form<WeldSeam>.Of<MitreWelds>("mitre", Read, Write);

    private static MitreWelds? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Angle turn = reader.Angle("turn");
        int count = reader.Count("count");
        return reader.Make(() => new MitreWelds(outsideDiameter, turn, count));
    }

    private static void Write(FormWriter writer, MitreWelds welds)
    {
        writer.Length("outsideDiameter", welds.OutsideDiameter);
        writer.Angle("turn", welds.Turn);
        writer.Count("count", welds.Count);
    }
}
