using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;

namespace SacrificialTape.Reports.Sections;

/// <summary>The sections of a job pack in their order: first what may hurt someone, last how it was worked out.</summary>
internal static class PackSections
{
    internal static PackPage Of(JobPack pack)
    {
        var text = new NumberText(pack.Options.Culture, pack.Options.Units);
        IEnumerable<IEnumerable<PackBlock>> sections =
        [
            SummarySection.Of(pack, text),
            CautionSection.Of(pack),
            NoteSection.Of(pack),
            OrderSection.Of(pack, text),
            CostSection.Of(pack, text),
            LaySection.Of(pack, text),
            LifeSection.Of(pack, text),
            CutSection.Of(pack, text),
            FindingSection.Of(pack, text),
            CrewSection.Of(pack),
            WorkingsSection.Of(pack),
        ];
        return new PackPage($"Job pack: {pack.Estimate.Job.Name}", [.. sections.SelectMany(static section => section)]);
    }
}
