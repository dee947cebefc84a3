using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>How the paint over the tape is read and written.</summary>
internal static class PaintFilmForm
{
    internal static PaintFilm? Read(FormReader reader)
    {
        Lifetime earliest = LifetimeText.Read(reader, "earliest");
        Lifetime latest = LifetimeText.Read(reader, "latest");
        bool alkyd = reader.Flag("alkydNextToZinc");
        return reader.Make(() => new PaintFilm(earliest, latest, alkyd));
    }

    internal static void Write(FormWriter writer, PaintFilm paint)
    {
        LifetimeText.Write(writer, "earliest", paint.Earliest);
        LifetimeText.Write(writer, "latest", paint.Latest);
        writer.Flag("alkydNextToZinc", paint.AlkydNextToZinc);
    }
}
