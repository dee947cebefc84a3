using System.Globalization;
using SacrificialTape.Documents;

// What a consumer of the package does, against numbers worked out by hand.
var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(50));
var pipe = new StraightPipe(PipeSize.FromNps("2"), Length.FromMeters(12));
var lay = new SpiralLay(pipe, stock, SpiralSetting.FromLapAlongPipe(Length.FromMillimeters(20)));
var line = new SurveyLine("A-1", lay, ZincExposure.FromCategory(CorrosivityCategory.C4), Lifetime.Of(Duration.FromYears365(15)));
JobEstimate estimate = new Job(
    "consumer", [line], TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05))).Estimate();

int wrong = 0;

// 60.3 mm pipe, 100 mm strip, 20 mm lap along the pipe: the true lap is 18.03 mm.
Expect("true lap, mm", 18.0308, lay.Geometry.TrueLap.Millimeters, 1e-4);

// 80 % of 100 um at 4.2 um/a.
Expect("earliest life, years", 80 / 4.2, estimate.Lines[0].Life.Earliest.Duration.Days / 365, 1e-9);

// C h (w / e) / w of strip, and the trimmed ends w / tan(theta): e = 100 - 18.0308, C = pi 60.3.
double e = 100 - 18.0308;
double c = Math.PI * 60.3;
Expect("strip, m", (12 * c / e) + (0.1 * Math.Sqrt((c * c) - (e * e)) / e), lay.Strips[0].Length.Meters, 1e-3);
Expect("rolls", 1, estimate.TakeOff.Stocks[0].Rolls, 0);
Expect("zinc bought, kg", 50 * 0.1 * 0.0001 * 7140, estimate.TakeOff.ZincBought.Kilograms, 1e-9);
Expect("workings, steps", 1, lay.ShowWorkings().Steps.Count > 5 ? 1 : 0, 0);
Expect("findings without a basis", 0, estimate.Findings.Count(finding => finding.Rule.Basis.ToString().Length == 0), 0);

// Files: there and back without a bit lost, also where code is compiled ahead of time.
var job = new JobDocument(estimate.Job, notes: [new JobNote("invented", "A-1")]);
Expect("job there and back", 1, JobDocument.Read(job.Write()).Equals(job) ? 1 : 0, 0);
var kept = new EstimateDocument(job, new DateOnly(2031, 5, 4));
EstimateDocument read = EstimateDocument.Read(kept.Write());
Expect("estimate there and back", 1, read.Equals(kept) ? 1 : 0, 0);
Expect("results that differ when worked out again", 0, read.Differences().Count, 0);
RuleSetDocument rules = RuleSetDocument.Read(RuleSetDocument.Reference.Write());
Expect("rules there and back", 1, rules.Rules.Fingerprint == RuleSet.Default.Fingerprint ? 1 : 0, 0);
Expect("published cases that do not agree", 0, rules.Verify().Results.Count(result => !result.Agrees), 0);

Console.WriteLine(wrong == 0 ? "consumer: all right" : $"consumer: {wrong} wrong");
return wrong;

void Expect(string what, double expected, double got, double tolerance)
{
    bool right = Math.Abs(expected - got) <= tolerance;
    wrong += right ? 0 : 1;
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(right ? "right" : "WRONG")}: {what} {got:R}, expected {expected:R}"));
}
