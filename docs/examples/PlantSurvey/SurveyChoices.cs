using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace PlantSurvey;

/// <summary>What the estimator chose for the whole job: choices.csv.</summary>
internal sealed record SurveyChoices(string JobName, Length EndLap, Length HandWander, TakeOffChoices TakeOff, LifeChoices Life)
{
    private const string File = "choices.csv";

    private static readonly string[] Columns =
        ["job", "end_lap_mm", "hand_wander_mm", "splice_lap_mm", "shortest_piece_m", "contingency_percent"];

    internal static SurveyChoices? Read(string folder, List<SurveyFault> faults)
    {
        CsvTable? table = CsvTable.Read(folder, File, Columns, LifeChoices.Columns, faults);
        if (table is null || table.Rows.Count == 0)
        {
            return null;
        }

        if (table.Rows.Count > 1)
        {
            table.Rows[1].Fault("job", "One row of choices is expected, not more.");
            return null;
        }

        CsvRow row = table.Rows[0];
        string name = row.Text("job");
        double endLap = row.Number("end_lap_mm");
        double wander = row.Number("hand_wander_mm");
        double spliceLap = row.Number("splice_lap_mm");
        double shortest = row.Number("shortest_piece_m");
        double contingency = row.Number("contingency_percent");
        LifeChoices? life = LifeChoices.Read(row);
        if (row.Faulty)
        {
            return null;
        }

        TakeOffChoices takeOff = row.Try("contingency_percent", () => new TakeOffChoices(
            Length.FromMillimeters(spliceLap), Length.FromMeters(shortest), Contingency.FromFraction(contingency / 100)));
        return row.Faulty
            ? null
            : new SurveyChoices(name, Length.FromMillimeters(endLap), Length.FromMillimeters(wander), takeOff, life!);
    }
}
