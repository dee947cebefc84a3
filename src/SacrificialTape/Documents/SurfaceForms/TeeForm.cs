using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a tee is read and written: by its sizes where its lengths are those of the table, or by its dimensions.</summary>
internal static class TeeForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<Tee>("tee", Read, Write);

    private static Tee? Read(FormReader reader)
    {
        if (reader.Has("runSize"))
        {
            PipeSize run = PipeSizeText.Read(reader, "runSize");
            PipeSize branch = PipeSizeText.Read(reader, "branchSize");
            return reader.Make(() => new Tee(run, branch));
        }

        Length runDiameter = reader.Length("runDiameter");
        Length branchDiameter = reader.Length("branchDiameter");
        Length runCentreToEnd = reader.Length("runCentreToEnd");
        Length branchCentreToEnd = reader.Length("branchCentreToEnd");
        return reader.Make(() => new Tee(runDiameter, branchDiameter, runCentreToEnd, branchCentreToEnd));
    }

    private static void Write(FormWriter writer, Tee tee)
    {
        if (tee.LengthBasis is not null)
        {
            writer.Text("runSize", PipeSizeText.OfAsme(tee.RunMm, writer.Place));
            writer.Text("branchSize", PipeSizeText.OfAsme(tee.BranchMm, writer.Place));
            return;
        }

        writer.Length("runDiameter", tee.RunDiameter);
        writer.Length("branchDiameter", tee.BranchDiameter);
        writer.Length("runCentreToEnd", tee.RunCentreToEnd);
        writer.Length("branchCentreToEnd", tee.BranchCentreToEnd);
    }
}
