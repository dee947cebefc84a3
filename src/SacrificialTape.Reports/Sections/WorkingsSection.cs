using SacrificialTape.Jobs;
using SacrificialTape.Reports.Blocks;

namespace SacrificialTape.Reports.Sections;

/// <summary>Every step from the numbers of a line to its answers, if it is wanted.</summary>
internal static class WorkingsSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack)
    {
        if (!pack.Options.WithWorkings)
        {
            yield break;
        }

        yield return new HeadingBlock(2, "Workings", NewSheet: true);
        foreach (LineEstimate line in pack.Estimate.Lines)
        {
            yield return new WorkingsBlock(line.Line.Tag, [line.Line.Lay.Surface.ShowWorkings(), line.Line.Lay.ShowWorkings(), line.Life.ShowWorkings()]);
        }
    }
}
