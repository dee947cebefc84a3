using SacrificialTape.Reports.Blocks;

namespace SacrificialTape.Reports.Sections;

/// <summary>What people remarked, if they did: on the job first, then line by line as it was written down.</summary>
internal static class NoteSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack)
    {
        if (pack.Options.Notes.Count == 0)
        {
            yield break;
        }

        yield return new HeadingBlock(2, "Notes");
        yield return new TableBlock(
            "What was remarked",
            [new("Where"), new("Note")],
            [.. pack.Options.Notes.OrderBy(static note => note.Tag is not null).Select(static note => (IReadOnlyList<string>)[note.Tag ?? "job", note.Text])]);
    }
}
