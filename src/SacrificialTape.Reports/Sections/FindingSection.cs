using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;
using SacrificialTape.Rules;

namespace SacrificialTape.Reports.Sections;

/// <summary>Every finding, worst first, and those that were waived with who waived them and why.</summary>
internal static class FindingSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack, NumberText text)
    {
        yield return new HeadingBlock(2, "Findings", NewSheet: true);
        FindingsUnderWaivers findings = pack.Findings;
        if (findings.Open.Count == 0)
        {
            yield return new ParagraphBlock("None is open.");
        }
        else
        {
            yield return new TableBlock(
                "Open findings, worst first",
                [new("Where"), new("Severity"), new("What was found, and what to do"), new("Rule")],
                [.. findings.Open.GroupBy(static finding => (finding.Severity, finding.Rule.Id, finding.Message))
                    .OrderByDescending(static same => same.Key.Severity)
                    .Select(static same => (IReadOnlyList<string>)
                    [
                        string.Join(", ", same.Select(static finding => finding.Subject).Distinct()), Word(same.Key.Severity), same.Key.Message, same.Key.Id,
                    ])]);
        }

        if (findings.Waived.Count > 0)
        {
            yield return new TableBlock(
                "Waived findings: they were found all the same",
                [new("Where"), new("What was found"), new("Waived by"), new("Why")],
                [.. findings.Waived.Select(one => (IReadOnlyList<string>)
                [
                    one.Finding.Subject, one.Finding.Message, $"{one.Waiver.Person}, {text.Day(one.Waiver.Granted)}{(one.Waiver.Until is { } until ? $" until {text.Day(until)}" : string.Empty)}", one.Waiver.Reason,
                ])]);
        }

        if (findings.Unused.Count > 0)
        {
            yield return new ListBlock(false, [.. findings.Unused.Select(static waiver => new ListItem("Waiver that nothing was found for", $"{waiver.RuleId}, {waiver.Subject}"))]);
        }
    }

    internal static string Word(Severity severity) => severity switch
    {
        Severity.Stop => "STOP",
        Severity.Warning => "warning",
        _ => "note",
    };
}
