using SacrificialTape.Jobs;
using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Reports.Sections;

/// <summary>How each line is covered.</summary>
internal static class LaySection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack, NumberText text)
    {
        yield return new HeadingBlock(2, "Lay sheet", NewSheet: true);
        yield return new TableBlock(
            $"How each line is covered (lap: true, across the strip; outside on bends; {text.Short})",
            [
                new("Line"), new("Surface"), TableColumn.Of(text.Square), new("Lay"), new("Strip"), TableColumn.Of("Angle deg"), TableColumn.Of("Mark"),
                TableColumn.Of("Lap"), TableColumn.Of("Pieces"), TableColumn.Of($"Strip {text.Long}"), TableColumn.Of("Layers"), TableColumn.Of("on average"),
            ],
            [.. pack.Estimate.Lines.Select(line => Row(line, pack, text))]);
    }

    private static IReadOnlyList<string> Row(LineEstimate line, JobPack pack, NumberText text)
    {
        ILay lay = line.Line.Lay;
        (string angle, string mark, string lap) = lay switch
        {
            SpiralLay spiral => (
                text.Number(spiral.Geometry.Angle.Degrees, 1), text.Millimetres(spiral.Geometry.Advance), text.Millimetres(spiral.Geometry.TrueLap)),
            RingLay { Rings: > 1 } rings => (string.Empty, text.Millimetres(rings.Stock.Width - rings.Lap), text.Millimetres(rings.Lap)),
            BendRingLay rings => (string.Empty, text.Millimetres(rings.Stock.Width - rings.OutsideLap), text.Millimetres(rings.OutsideLap)),
            AlongPipeLay along => (string.Empty, string.Empty, text.Millimetres(along.Lap)),
            _ => (string.Empty, string.Empty, string.Empty),
        };
        return
        [
            line.Line.Tag,
            lay.Surface.Description,
            text.Area(line.Covered),
            lay.Description,
            StripText.Of(lay.Stock, pack, text),
            angle,
            mark,
            lap,
            text.Count(line.Strips.Sum(static strip => (long)strip.Count)),
            text.Metres(line.StripLength),
            text.Count(lay.LayersEverywhere),
            text.Number(lay.LayersOnAverage.Ratio, 2),
        ];
    }
}
