using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a pipe strap is read and written.</summary>
internal static class PipeStrapForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<PipeStrap>("pipe strap", Read, Write);

    private static PipeStrap? Read(FormReader reader)
    {
        Length pipeOutsideDiameter = reader.Length("pipeOutsideDiameter");
        Length strapWidth = reader.Length("strapWidth");
        Length strapThickness = reader.Length("strapThickness");
        Angle wrap = reader.Angle("wrap");
        Length straightEnds = reader.Length("straightEnds");
        StrapFaces faces = reader.Word("faces", JobWords.Faces);
        return reader.Make(() => new PipeStrap(pipeOutsideDiameter, strapWidth, strapThickness, wrap, straightEnds, faces));
    }

    private static void Write(FormWriter writer, PipeStrap strap)
    {
        writer.Length("pipeOutsideDiameter", strap.PipeOutsideDiameter);
        writer.Length("strapWidth", strap.StrapWidth);
        writer.Length("strapThickness", strap.StrapThickness);
        writer.Angle("wrap", strap.Wrap);
        writer.Length("straightEnds", strap.StraightEnds);
        writer.Word("faces", strap.Faces, JobWords.Faces);
    }
}
