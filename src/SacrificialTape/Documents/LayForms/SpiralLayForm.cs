using System.Runtime.CompilerServices;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a spiral on a pipe is read and written.</summary>
internal static class SpiralLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<SpiralLay>("spiral", Read, Write);

    private static SpiralLay? Read(FormReader reader)
    {
        StraightPipe pipe = reader.Surface<StraightPipe>("surface");
        StripStock stock = reader.Stock("stock");
        StrongBox<SpiralSetting> setting = reader.Object("setting", Setting);
        int levelTurns = reader.OptionalCount("levelTurns", 0);
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new SpiralLay(
            pipe, stock, setting.Value, levelTurns == 0 ? SpiralEnds.TrimmedFlush : SpiralEnds.LevelTurns(levelTurns), choices));
    }

    private static void Write(FormWriter writer, SpiralLay lay)
    {
        writer.Surface("surface", lay.Pipe);
        writer.Stock("stock", lay.Stock);
        writer.Object("setting", new StrongBox<SpiralSetting>(lay.Geometry.Setting), WriteSetting);
        if (lay.Ends.LevelTurnsAtEachEnd > 0)
        {
            writer.Count("levelTurns", lay.Ends.LevelTurnsAtEachEnd);
        }

        writer.Choices("choices", lay.Choices);
    }

    private static StrongBox<SpiralSetting>? Setting(FormReader reader)
    {
        LapConvention by = reader.Word("by", JobWords.LapConventions);
        Length value = reader.Length("value");
        return reader.Make(() => new StrongBox<SpiralSetting>(by switch
        {
            LapConvention.TrueLap => SpiralSetting.FromTrueLap(value),
            LapConvention.LapAlongPipe => SpiralSetting.FromLapAlongPipe(value),
            LapConvention.LapBetweenMarks => SpiralSetting.FromLapBetweenMarks(value),
            _ => SpiralSetting.FromAdvance(value),
        }));
    }

    private static void WriteSetting(FormWriter writer, StrongBox<SpiralSetting> setting)
    {
        writer.Word("by", setting.Value.Convention, JobWords.LapConventions);
        writer.Length("value", setting.Value.Value);
    }
}
