using SacrificialTape.Costing;
using SacrificialTape.Documents;
using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Reports;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/exchange-jobs.md quotes. The works and its numbers are invented.</summary>
public static class ExchangeJobsPage
{
    private const string WorksFile = """
        {
          "document": "job",
          "schema": 1,
          "name": "Invented works, hall 2",
          "rules": {
            "name": "SacrificialTape common practice",
            "version": "1",
            "fingerprint": "THE FINGERPRINT OF THE RULES"
          },
          "takeOff": { "spliceLap": "20 mm", "shortestPiece": "1 m", "contingency": "5 %" },
          "stocks": [
            {
              "name": "100 wide",
              "width": "100 mm",
              "rollLength": "50 m",
              "foil": { "thickness": "100 um", "density": "7140 kg/m3" },
              "adhesive": { "thickness": "25 um" }
            }
          ],
          "lines": [
            {
              "tag": "H2-017",
              "lay": {
                "kind": "spiral",
                "surface": { "kind": "pipe", "outsideDiameter": "6.625 in", "length": "12 m" },
                "stock": "100 wide",
                "setting": { "by": "true lap", "value": "20 mm" },
                "choices": { "endLap": "20 mm", "handWander": "3 mm" }
              },
              "exposure": { "kind": "category", "name": "C3" },
              "requiredLife": "20 a"
            }
          ],
          "notes": [ { "line": "H2-017", "text": "scaffold from axis 4" } ]
        }
        """;

    private static string Json => WorksFile.Replace("THE FINGERPRINT OF THE RULES", RuleSet.Default.Fingerprint.ToString(), StringComparison.Ordinal);

    public static void Read()
    {
        string json = Json;
        #region read
        JobDocument works = JobDocument.Read(json);
        Console.WriteLine(works);
        Console.WriteLine(works.Job.Lines[0]);
        Console.WriteLine(works.Job.Estimate());
        #endregion
    }

    public static void Write()
    {
        string json = Json;
        #region write
        JobDocument works = JobDocument.Read(json);
        string again = works.Write();
        Console.WriteLine(JobDocument.Read(again) == works);
        Console.WriteLine(string.Join('\n', again.Split('\n').Where(static line => line.Contains("outsideDiameter") || line.Contains("contingency"))));
        #endregion
    }

    public static void Estimate()
    {
        string json = Json;
        #region estimate
        var estimate = new EstimateDocument(JobDocument.Read(json), new DateOnly(2031, 5, 4));
        string file = estimate.Write();

        // Years later, perhaps with another version of the library:
        EstimateDocument kept = EstimateDocument.Read(file);
        Console.WriteLine(kept.Results.Lines[0]);
        Console.WriteLine($"{kept.Differences().Count} difference(s)");

        EstimateDocument other = EstimateDocument.Read(file.Replace("\"rolls\": 2", "\"rolls\": 3", StringComparison.Ordinal));
        Console.WriteLine(other.Differences()[0]);
        #endregion
    }

    public static void AsBuilt()
    {
        string json = Json;
        #region as-built
        InspectionPlan plan = JobDocument.Read(json).Job.Estimate().PlanInspection();
        var morning = new DateTimeOffset(2031, 5, 4, 9, 30, 0, TimeSpan.FromHours(2));
        var line = new AsBuiltLine(
            "H2-017", "A. Person", morning, [new TapeBatch("B-117", null, new DateOnly(2031, 12, 31), null, null)],
            [HoldPointReading.OfLaps(Length.FromMillimeters(6), null, "C. Person", morning), HoldPointReading.OfRollDown(true, "C. Person", morning)]);
        var record = new AsBuiltRecord(plan, [line]);
        record = record.Sign(record.OpenFindings.First(static one => one.Rule.Id == RuleIds.MinimumLap), "C. Person", morning, "laid again at once");

        string file = new AsBuiltDocument("Invented works, hall 2", record).Write();
        AsBuiltDocument read = AsBuiltDocument.Read(file);
        Console.WriteLine(read);
        Console.WriteLine(read.Record.Signatures[0]);
        #endregion
    }

    public static void Faults()
    {
        string json = Json.Replace("\"6.625 in\"", "\"6,625 in\"", StringComparison.Ordinal)
            .Replace("\"value\": \"20 mm\"", "\"value\": \"120 mm\"", StringComparison.Ordinal)
            .Replace("\"stock\": \"100 wide\"", "\"stock\": \"100 wise\"", StringComparison.Ordinal)
            .Replace("\"contingency\": \"5 %\"", "\"contingency\": \"5\"", StringComparison.Ordinal);
        #region faults
        try
        {
            JobDocument.Read(json);
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

    public static void WebHost()
    {
        string json = Json;
        #region web-host
        JobDocument works = JobDocument.Read(json, limits: DocumentLimits.WebHost);
        Console.WriteLine(DocumentLimits.WebHost);
        Console.WriteLine(works.Job);
        #endregion
    }

    public static void Cost()
    {
        string json = Json.Replace("\"notes\":", """
            "prices": {
                "rolls": [ { "stock": "100 wide", "perRoll": "90 EUR" } ],
                "labourPerHour": "50 EUR",
                "norms": [ { "lay": "spiral", "method": "by hand", "surface": "pipe", "per": "area", "time": "0.5 h" } ]
              },
              "notes":
            """, StringComparison.Ordinal);
        #region cost
        JobDocument works = JobDocument.Read(json);
        ValueList<LabourWork> work = works.WorkByLine();
        Console.WriteLine(work[0]);
        var estimate = new EstimateDocument(works, new DateOnly(2031, 5, 4), work);
        var pack = new JobPack(estimate.Estimate(), JobPackOptions.Of(estimate));
        Console.WriteLine($"{estimate.Results.Totals}; {estimate.Cost()!.ToLedger().Total}; {pack.Options.Notes.Count} note(s) in the pack");
        #endregion
    }

    public static void OwnKind()
    {
        string json = Json;
        #region own-kind
        var forms = new DocumentForms(surfaces:
        [
            SurfaceForm.Of<Tank>(
                "tank",
                static reader =>
                {
                    Area wall = reader.Area("wall");
                    return reader.Make(() => new Tank(wall));
                },
                static (writer, tank) => writer.Area("wall", tank.Area)),
        ]);
        JobDocument works = JobDocument.Read(json, forms: forms);
        Console.WriteLine(forms);
        #endregion
        _ = works;
    }

    // A surface of a host's own.
    private sealed record Tank(Area Wall) : Surface
    {
        public override Area Area => this.Wall;

        public override string Description => "tank of " + new Measure(this.Wall.SquareMeters, TradeUnit.SquareMeter);

        public override Workings ShowWorkings() => new(this.Description, []);
    }
}
