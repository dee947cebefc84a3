using System.Globalization;
using System.Text;
using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <summary>The docs page of all checks, made from the checks themselves.</summary>
internal static class ChecksPage
{
    /// <summary>Differences smaller than this share of the value are rounding and depend on the machine: shown as 0.</summary>
    private const double Rounding = 1e-9;

    internal static string Text()
    {
        var page = new StringBuilder();
        Head(page);
        foreach (CheckGroup group in AllChecks.Groups)
        {
            Section(page, group);
        }

        return page.ToString();
    }

    private static void Head(StringBuilder page)
    {
        Line(page, "# Outside checks");
        Line(page);
        Line(page, "<!-- Generated from the cases in tests/SacrificialTape.PublishedValues. Do not edit: see below how to make it anew. -->");
        Line(page);
        Line(page, "Every row holds a number from outside the library against the number the library gives. This page is generated from the tests that compare them; a test fails when the two differ, and another when this page is not what the tests would write. To make it anew, run the tests with the environment variable set:");
        Line(page);
        Line(page, "```");
        Line(page, "SACRIFICIALTAPE_WRITE_PAGES=1 dotnet run --project tests/SacrificialTape.PublishedValues");
        Line(page, "```");
        Line(page);
        Line(page, "Tolerances are absolute: half a unit of the last digit printed, or the error of the construction. Differences below a thousand-millionth of the value are shown as 0.");
        Line(page);
        Totals(page);
        Recalled(page);
        Disagreements(page);
    }

    private static void Totals(StringBuilder page)
    {
        Line(page, "## How much of which evidence");
        Line(page);
        Line(page, "| Evidence | Checks | What it is worth |");
        Line(page, "|---|---:|---|");
        foreach (EvidenceKind kind in Enum.GetValues<EvidenceKind>())
        {
            int count = AllChecks.Cases.Count(check => check.Evidence.Kind == kind);
            Line(page, FormattableString.Invariant($"| {Name(kind)} | {count} | {Worth(kind)} |"));
        }

        Line(page, FormattableString.Invariant($"| all | {AllChecks.Cases.Count} | |"));
        Line(page);
    }

    private static void Recalled(StringBuilder page)
    {
        Line(page, "## Recalled, check before use");
        Line(page);
        Line(page, "These documents were not re-read; what was taken from them is from memory. Look the numbers up before you rely on them.");
        Line(page);
        foreach (SourceReference source in References.All.Concat(Sources.All).Where(static source => source.Reading == SourceReading.Recalled))
        {
            int own = AllChecks.Cases.Count(check => check.Evidence.Source == source && check.Evidence.Kind == EvidenceKind.Recalled);
            int inputs = AllChecks.Cases.Count(check => check.Evidence.Source == source && check.Evidence.Kind != EvidenceKind.Recalled);
            string behind = inputs == 0 ? string.Empty : FormattableString.Invariant($", and the inputs of {inputs} computed one(s)");
            Line(page, FormattableString.Invariant($"- {source.Document}, {source.Clause}: {source.Taken}. {own} check(s){behind}."));
        }

        Line(page);
    }

    private static void Disagreements(StringBuilder page)
    {
        Line(page, "## Known disagreements");
        Line(page);
        Line(page, "Here source and library differ by more than the tolerance, and it is known why. The test of such a row fails when the disagreement goes away.");
        Line(page);
        foreach (PublishedCase check in AllChecks.Cases.Where(static check => check.KnownDisagreement is not null))
        {
            Line(page, $"- `{check.Id}`: {check.What}: source {Shown(check, check.Expected)}, library {Shown(check, check.Compute())} {check.Unit}. {check.KnownDisagreement}");
        }

        Line(page);
    }

    private static void Section(StringBuilder page, CheckGroup group)
    {
        Line(page, "## " + group.Title);
        Line(page);
        Line(page, group.About);
        Line(page);
        SourceReference[] sources = [.. group.Cases.Select(static check => check.Evidence.Source).OfType<SourceReference>().Distinct()];
        foreach (SourceReference source in sources)
        {
            Line(page, $"- `{source.Id}`: {source}. {source.Taken}.");
        }

        if (sources.Length > 0)
        {
            Line(page);
        }

        Line(page, "| Check | Source or mark | Unit | Expected | Got | Difference | Tolerance |");
        Line(page, "|---|---|---|---:|---:|---:|---:|");
        foreach (PublishedCase check in group.Cases)
        {
            double got = check.Compute();
            string what = check.KnownDisagreement is null ? check.What : check.What + " (known disagreement)";
            Line(page, $"| {Cell(what)} | {Cell(Mark(check.Evidence))} | {check.Unit} | {Shown(check, check.Expected)} | {Shown(check, got)} | {Difference(check, got)} | {Number(check.Tolerance, 2)} |");
        }

        Line(page);
    }

    private static string Mark(Evidence evidence)
    {
        string text = Name(evidence.Kind);
        if (evidence.Source is { } source)
        {
            text += evidence.Kind is EvidenceKind.FirstPrinciples or EvidenceKind.ComputedElsewhere
                ? $", inputs from `{source.Id}`{(source.Reading == SourceReading.Recalled ? " (recalled)" : string.Empty)}"
                : $", `{source.Id}`";
        }

        return evidence.Note.Length == 0 ? text : text + ": " + evidence.Note;
    }

    private static string Name(EvidenceKind kind) => kind switch
    {
        EvidenceKind.Published => "published, read",
        EvidenceKind.PublishedSecondHand => "published, as quoted elsewhere",
        EvidenceKind.PublishedFormula => "published formula, worked out apart",
        EvidenceKind.Recalled => "recalled, check before use",
        EvidenceKind.CommonPractice => "common practice, no source",
        EvidenceKind.FirstPrinciples => "first principles",
        _ => "computed elsewhere",
    };

    private static string Worth(EvidenceKind kind) => kind switch
    {
        EvidenceKind.Published => "the number stands in a document that was read",
        EvidenceKind.PublishedSecondHand => "the number was read in a text that quotes the document",
        EvidenceKind.PublishedFormula => "the formula stands in a document that was read; the number does not",
        EvidenceKind.Recalled => "the number is from memory of a named document; agreement is a check of the code only",
        EvidenceKind.CommonPractice => "what the trade does; it shows that the library carries the figure, not that the figure is right",
        EvidenceKind.FirstPrinciples => "arithmetic or a construction that goes another way than the library's formula",
        _ => "another program's number, typed in; a check of the arithmetic only",
    };

    private static string Shown(PublishedCase check, double number) => check.Show?.Invoke(number) ?? Number(number, 7);

    private static string Difference(PublishedCase check, double got)
    {
        double difference = Math.Abs(got - check.Expected);
        if (check.Show is not null)
        {
            return Shown(check, got) == Shown(check, check.Expected) ? "0" : "differs";
        }

        return difference <= Rounding * Math.Max(Math.Abs(got), Math.Abs(check.Expected)) ? "0" : Number(difference, 2);
    }

    private static string Number(double number, int digits) =>
        number == 0 ? "0" : number.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal);

    private static void Line(StringBuilder page, string text = "") => page.Append(text).Append('\n');
}
