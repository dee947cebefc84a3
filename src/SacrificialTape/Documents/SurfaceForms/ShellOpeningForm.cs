using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How openings in a shell are read and written.</summary>
internal static class ShellOpeningForm
{
    internal static ShellOpening? Read(FormReader reader)
    {
        int count = reader.OptionalCount("count", 1);
        if (reader.Has("diameter"))
        {
            Length diameter = reader.Length("diameter");
            return reader.Make(() => ShellOpening.Round(diameter, count));
        }

        Length along = reader.Length("along");
        Length around = reader.Length("around");
        return reader.Make(() => ShellOpening.Rectangular(along, around, count));
    }

    internal static void Write(FormWriter writer, ShellOpening opening)
    {
        if (opening.IsRound)
        {
            writer.Length("diameter", opening.ExtentAlong);
        }
        else
        {
            writer.Length("along", opening.ExtentAlong);
            writer.Length("around", opening.ExtentAround);
        }

        if (opening.Count != 1)
        {
            writer.Count("count", opening.Count);
        }
    }
}
