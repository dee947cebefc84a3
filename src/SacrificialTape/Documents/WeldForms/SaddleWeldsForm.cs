using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How the welds of branches are read and written.</summary>
internal static class SaddleWeldsForm
{
    internal static Form<WeldSeam> Form { get; } = Form<WeldSeam>.Of<SaddleWelds>("saddle", Read, Write);

    private static SaddleWelds? Read(FormReader reader)
    {
        Length runDiameter = reader.Length("runDiameter");
        Length branchDiameter = reader.Length("branchDiameter");
        int count = reader.Count("count");
        return reader.Make(() => new SaddleWelds(runDiameter, branchDiameter, count));
    }

    private static void Write(FormWriter writer, SaddleWelds welds)
    {
        writer.Length("runDiameter", welds.RunDiameter);
        writer.Length("branchDiameter", welds.BranchDiameter);
        writer.Count("count", welds.Count);
    }
}
