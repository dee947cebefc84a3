using System.Globalization;
using SacrificialTape.Costing;
using SacrificialTape.Documents;
using SacrificialTape.Jobs;
using SacrificialTape.Rules;

namespace HostTool;

/// <summary>An estimate as this tool shows it: numbers in the culture of its reader, findings sorted by what they mean for the work.</summary>
internal static class EstimateReport
{
    // A tool of your own takes the day of the estimate. This one is always made on the same day, so that its output can be checked.
    private static readonly DateOnly Day = new(2026, 11, 30);

    internal static void Write(RuleSetDocument team, JobEstimate estimate, CultureInfo culture, TextWriter output)
    {
        output.WriteLine(string.Create(culture, $"{estimate.Job.Name}, by {team.Rules}"));
        WriteLines(estimate, culture, output);
        CostLedger cost = LightingJob.Price(estimate).ToLedger();
        output.WriteLine(string.Create(culture, $"To order: {estimate.TakeOff.Stocks.Sum(static one => one.Rolls)} rolls"));
        foreach (CostLedgerLine line in cost.Lines)
        {
            output.WriteLine(string.Create(culture, $"{line.Line.Kind,-8}{line.Amount.Amount,9:N2} {line.Amount.Currency}  {line.Line.Name}"));
        }

        output.WriteLine(string.Create(culture, $"{"Total",-8}{cost.Total.Amount,9:N2} {cost.Total.Currency}"));
        WriteFindings(team, estimate, culture, output);
    }

    #region lines
    private static void WriteLines(JobEstimate estimate, CultureInfo culture, TextWriter output)
    {
        foreach (LineEstimate line in estimate.Lines)
        {
            output.WriteLine(string.Create(
                culture, $"{line.Line.Tag}  {line.Covered.SquareMeters:0.00} m2, {line.StripLength.Meters:0.0} m of strip, lasts {line.Life.Earliest.Duration.Years365:0.0} a or more"));
        }
    }
    #endregion

    #region findings
    private static void WriteFindings(RuleSetDocument team, JobEstimate estimate, CultureInfo culture, TextWriter output)
    {
        var sorted = FindingsUnderWaivers.Of(estimate.Findings, team.Waivers, Day);
        IEnumerable<Finding> open = [.. sorted.Open, .. sorted.Judge(team.Rules), .. team.Rules.JudgeValidity(Day)];
        foreach (Finding finding in open.Where(static one => one.Severity != Severity.Note).OrderByDescending(static one => one.Severity))
        {
            output.WriteLine($"{finding.Severity} [{finding.Rule.Id}] {finding.Subject}: {finding.Rule.Title}{Numbers(finding, culture)}");
            output.WriteLine($"    {finding.Rule.Remedy}");
            output.WriteLine($"    Basis: {finding.Rule.Basis}");
        }

        foreach (WaivedFinding waived in sorted.Waived)
        {
            output.WriteLine($"Waived [{waived.Finding.Rule.Id}] {waived.Finding.Subject}: {waived.Waiver.Reason}, {waived.Waiver.Person}");
        }

        foreach (IGrouping<string, Finding> notes in open.Where(static one => one.Severity == Severity.Note).GroupBy(static one => one.Rule.Id))
        {
            output.WriteLine($"Note [{notes.Key}] {string.Join(", ", notes.Select(static one => one.Subject))}");
        }

        foreach (Rule rule in estimate.Job.UnjudgedRules)
        {
            output.WriteLine($"Nobody judged by [{rule.Id}]: {rule.Title}");
        }
    }

    private static string Numbers(Finding finding, CultureInfo culture) => (finding.Measured, finding.Limit) switch
    {
        ({ } measured, { } limit) => $": {measured.ToText(culture)} against {limit.ToText(culture)}",
        ({ } measured, null) => $": {measured.ToText(culture)}",
        _ => string.Empty,
    };
    #endregion
}
