using SacrificialTape.Documents;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Snippets;

/// <summary>What docs/share-a-rule-set.md quotes. The team, its people and its numbers are invented.</summary>
public static class ShareARuleSetPage
{
    private const string TeamFile = """
        {
          "document": "rule set",
          "schema": 1,
          "name": "Estuary team",
          "version": "2026.2",
          "basedOn": {
            "name": "SacrificialTape common practice",
            "version": "1",
            "fingerprint": "THE FINGERPRINT OF THE PARENT"
          },
          "rules": [
            {
              "id": "lap.minimum",
              "limit": "15 mm",
              "basis": { "kind": "own experience", "note": "laps under 15 mm opened on two of nine trial wraps, May 2026" },
              "approved": { "by": "A. Person", "on": "2026-11-02" }
            },
            {
              "id": "estuary.wind.maximum",
              "own": true,
              "title": "Wind while laying, in metres a second",
              "kind": "maximum",
              "limit": "8",
              "severity": "warning",
              "basis": { "kind": "judgement", "note": "foil flaps; calibrate with the crew" },
              "remedy": "Wait, or lay in the lee of a sheet.",
              "validity": { "until": "2027-12-31" }
            }
          ],
          "waivers": [
            {
              "rule": "lap.minimum",
              "subject": "BR-101",
              "reason": "short spool between two supports, looked at on site",
              "by": "B. Person",
              "on": "2026-11-20",
              "until": "2027-03-31"
            }
          ]
        }
        """;

    private static string Json => TeamFile.Replace("THE FINGERPRINT OF THE PARENT", RuleSet.Default.Fingerprint.ToString(), StringComparison.Ordinal);

    public static void Read()
    {
        string json = Json;
        #region read
        RuleSetDocument team = RuleSetDocument.Read(json);
        Console.WriteLine(team.Rules);
        Console.WriteLine(RuleSetDifference.Between(RuleSet.Default, team.Rules));
        #endregion
    }

    public static void Faults()
    {
        string json = Json.Replace("\"15 mm\"", "\"1,5 mm\"", StringComparison.Ordinal).Replace("lap.minimum\",\n      \"subject", "lap.minimum2\",\n      \"subject", StringComparison.Ordinal)
            .Replace("\"2027-12-31\"", "\"31.12.2027\"", StringComparison.Ordinal);
        #region faults
        try
        {
            RuleSetDocument.Read(json);
        }
        catch (DocumentException e)
        {
            foreach (DocumentFault fault in e.Faults)
            {
                Console.WriteLine(fault);
            }
        }
        #endregion
    }

    public static void Waive()
    {
        RuleSetDocument team = RuleSetDocument.Read(Json);
        #region waive
        var today = new DateOnly(2026, 11, 27);
        Finding[] findings =
        [
            team.Rules[RuleIds.MinimumLap].Judge(Measure.Parse("12 mm"), "BR-101")!,
            team.Rules[RuleIds.MinimumLap].Judge(Measure.Parse("12 mm"), "BR-102")!,
        ];
        var sorted = FindingsUnderWaivers.Of(findings, team.Waivers, today);
        Console.WriteLine($"Open: {sorted.Open[0]}");
        Console.WriteLine($"Waived: {sorted.Waived[0]}");
        Console.WriteLine($"Out of date in 2028: {team.Rules.JudgeValidity(new DateOnly(2028, 1, 1)).Single().Subject}");
        #endregion
    }

    public static void Verify()
    {
        #region verify
        var ours = new VerificationCase(
            "trial-wrap-12-inch",
            "spiral.advance",
            [
                new CaseValue("outside diameter", Measure.Parse("323.9 mm")),
                new CaseValue("strip width", Measure.Parse("150 mm")),
                new CaseValue("true lap", Measure.Parse("15 mm")),
            ],
            expected: Measure.Parse("136 mm"),
            tolerance: Measure.Parse("1 mm"),
            Basis.OwnExperience("measured between two marks, mean of ten turns (invented)"));
        var document = new RuleSetDocument(RuleSet.Default, cases: [ours]);
        Console.WriteLine(document.Verify());
        Verification reference = RuleSetDocument.Reference.Verify();
        Console.WriteLine($"The library's own: {reference.Results.Count(result => result.Agrees)} of {reference.Results.Count} agree");
        #endregion
    }
}
