using SacrificialTape.Contact;
using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>How a survey line is read and written: its needs, and its lay.</summary>
internal static class SurveyLineForm
{
    internal static SurveyLine? Read(FormReader reader)
    {
        string tag = reader.Text("tag");
        reader.Context.Enter(reader.Node, "lines", tag);
        try
        {
            return Read(reader, tag);
        }
        finally
        {
            reader.Context.Leave();
        }
    }

    internal static void Write(FormWriter writer, SurveyLine line)
    {
        LineNeeds needs = line.Needs;
        writer.Text("tag", needs.Tag);
        writer.Lay("lay", line.Lay);
        writer.Object("exposure", needs.Exposure, ExposureForm.Write);
        LifetimeText.Write(writer, "requiredLife", needs.RequiredLife);
        if (!needs.Steel.Equals(SteelCondition.Bare))
        {
            writer.Object("steel", needs.Steel, SteelForm.Write);
        }

        if (needs.Welds is { } welds)
        {
            writer.Object("welds", welds, WeldWorkForm.Write);
        }

        if (needs.LayersWanted != 1)
        {
            writer.Count("layersWanted", needs.LayersWanted);
        }

        writer.List("spots", needs.Spots, StayClearForm.Write);
        writer.List("ends", needs.Ends, TapeEndForm.Write);
        if (needs.PaintOver is { } paint)
        {
            writer.Object("paintOver", paint, PaintFilmForm.Write);
        }

        if (needs.Windows is { } windows)
        {
            writer.Object("windows", windows, WindowLayoutForm.Write, line.Lay.Surface);
        }

        writer.OptionalWord("under", needs.Under, JobWords.UnderTape, UnderTape.SoundPaint);
        if (needs.Laws is { } laws)
        {
            writer.List("laws", laws, static (one, law) => one.Context.Forms.LossLaws.Write(one, law));
        }
    }

    private static SurveyLine? Read(FormReader reader, string tag)
    {
        ILay lay = reader.Lay("lay");
        ZincExposure exposure = reader.Object("exposure", ExposureForm.Read);
        Lifetime requiredLife = LifetimeText.Read(reader, "requiredLife");
        SteelCondition? steel = reader.OptionalObject("steel", SteelForm.Read);
        WeldWork? welds = reader.OptionalObject("welds", WeldWorkForm.Read);
        int layersWanted = reader.OptionalCount("layersWanted", 1);
        ValueList<StayClear> spots = reader.List("spots", StayClearForm.Read);
        ValueList<TapeEnd> ends = reader.List("ends", TapeEndForm.Read);
        PaintFilm? paintOver = reader.OptionalObject("paintOver", PaintFilmForm.Read);
        UnderTape under = reader.OptionalWord("under", JobWords.UnderTape, UnderTape.SoundPaint);

        // Left out: the laws that go with the exposure. A list without any is a fault of the line.
        ValueList<ILossLaw>? laws = reader.Has("laws") ? reader.List("laws", static one => one.Context.Forms.LossLaws.Read(one)) : null;

        // Where the lay could not be read, the windows have no surface to lie on: their faults come with the next reading.
        WindowLayout? windows = reader.Members.Optional("windows") is { } member && lay is not null
            ? ObjectReader.Open(member, reader.Context.Faults) is { } members ? WindowLayoutForm.Read(new FormReader(members, reader.Context, lay.Surface)) : null
            : null;
        return reader.Make(() => new SurveyLine(
            new LineNeeds(tag, exposure, requiredLife, steel, welds, layersWanted, spots, ends, paintOver, windows, under, laws), lay!));
    }
}
