using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How the upright welds of a shell are read and written.</summary>
internal static class PlateWeldsForm
{
    // The welds keep nothing of their shell but its length.
    private static readonly Length AnyDiameter = Length.FromMillimeters(1000);

    internal static Form<WeldSeam> Form { get; } = Form<WeldSeam>.Of<PlateWelds>("plate", Read, Write);

    private static PlateWelds? Read(FormReader reader)
    {
        Length length = reader.Length("shellLength");
        int courses = reader.Count("courses");
        int platesRound = reader.Count("platesRound");
        return reader.Make(() => new PlateWelds(new Shell(AnyDiameter, length, ShellAxis.Upright), courses, platesRound));
    }

    private static void Write(FormWriter writer, PlateWelds welds)
    {
        writer.Length("shellLength", Length.FromMillimeters(welds.ShellMm));
        writer.Count("courses", welds.Courses);
        writer.Count("platesRound", welds.PlatesRound);
    }
}
