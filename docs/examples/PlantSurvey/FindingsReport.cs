using SacrificialTape.Jobs;
using SacrificialTape.Rules;
using Spectre.Console;

namespace PlantSurvey;

/// <summary>The findings: those that stop or warn one by one, notes once for all lines that they hold for.</summary>
internal static class FindingsReport
{
    internal static void Write(JobEstimate estimate, IAnsiConsole console) => Write(estimate.Findings, estimate.Lines.Count, console);

    internal static void Write(IEnumerable<Finding> all, int lines, IAnsiConsole console)
    {
        List<Finding> findings = [.. all];
        console.WriteLine();
        console.WriteLine("Findings");
        foreach (Finding finding in findings.Where(static finding => finding.Severity == Severity.Stop))
        {
            WriteOne(console, "STOP", finding.Subject, finding);
        }

        foreach (IGrouping<(string, string), Finding> same in findings
            .Where(static finding => finding.Severity != Severity.Stop)
            .OrderByDescending(static finding => finding.Severity)
            .GroupBy(static finding => (finding.Rule.Id, finding.Message)))
        {
            Finding first = same.First();
            WriteOne(console, first.Severity == Severity.Warning ? "WARN" : "note", Subjects(same, lines), first);
        }
    }

    private static void WriteOne(IAnsiConsole console, string mark, string subject, Finding finding)
    {
        var grid = new Grid { Width = 150 };
        grid.AddColumn(new GridColumn { Width = 5, Padding = new Padding(0, 0, 0, 0) });
        grid.AddColumn(new GridColumn { Padding = new Padding(0, 0, 0, 0) });
        grid.AddRow(new Text(mark), new Text($"{subject}: {finding.Message} [{finding.Rule.Id}]"));
        console.Write(grid);
    }

    private static string Subjects(IEnumerable<Finding> same, int lines)
    {
        List<string> subjects = [.. same.Select(static finding => finding.Subject).Distinct()];
        return subjects.Count == lines ? $"all {lines} lines" : string.Join(", ", subjects);
    }
}
