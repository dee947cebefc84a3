using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a sheet edge is read and written.</summary>
internal static class SheetEdgeForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<SheetEdge>("sheet edge", Read, Write);

    private static SheetEdge? Read(FormReader reader)
    {
        Length edgeLength = reader.Length("edgeLength");
        Length thickness = reader.Length("thickness");
        Length frontReach = reader.Length("frontReach");
        Length backReach = reader.Length("backReach");
        int outsideCorners = reader.OptionalCount("outsideCorners", 0);
        int insideCorners = reader.OptionalCount("insideCorners", 0);
        reader.CountSteps((double)outsideCorners + insideCorners);
        return reader.Make(() => new SheetEdge(edgeLength, thickness, frontReach, backReach, outsideCorners, insideCorners));
    }

    private static void Write(FormWriter writer, SheetEdge edge)
    {
        writer.Length("edgeLength", edge.EdgeLength);
        writer.Length("thickness", edge.Thickness);
        writer.Length("frontReach", edge.FrontReach);
        writer.Length("backReach", edge.BackReach);
        if (edge.OutsideCorners != 0)
        {
            writer.Count("outsideCorners", edge.OutsideCorners);
        }

        if (edge.InsideCorners != 0)
        {
            writer.Count("insideCorners", edge.InsideCorners);
        }
    }
}
