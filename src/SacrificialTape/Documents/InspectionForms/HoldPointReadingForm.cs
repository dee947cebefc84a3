using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a reading at a hold point is read and written: what it holds goes with its point.</summary>
internal static class HoldPointReadingForm
{
    private const string Good = "good";
    private const string NotGood = "not good";

    /// <summary>Reads one. Thickness readings are judged again, by the rules of the record.</summary>
    internal static HoldPointReading? Read(FormReader reader, RuleSet rules)
    {
        // Which other members are wanted goes with the point: where it is not known, nothing can be said of them.
        if (reader.Members.Word("point", InspectionWords.HoldPoints) is not { } point)
        {
            return null;
        }

        string by = reader.Text("by");
        DateTimeOffset at = reader.Members.Time("at", "when it was looked at") ?? default;
        switch (point)
        {
            case HoldPointKind.TrialPatch:
                TrialPatch patch = reader.Object("patch", TrialPatchForm.Read);
                return reader.Make(() => HoldPointReading.OfTrialPatch(patch, by, at));
            case HoldPointKind.Cleaning:
                SurfaceReading surface = reader.Object("surface", SurfaceReadingForm.Read);
                return reader.Make(() => HoldPointReading.OfCleaning(surface, by, at));
            case HoldPointKind.Contact:
                double ratio = reader.Number("ratio", TradeUnit.SquareCentimeterPerSquareMeter);
                return reader.Make(() => HoldPointReading.OfContact(FormReader.At("ratio", () => BareRatio.FromSquareCentimetersPerSquareMeter(ratio)), by, at));
            case HoldPointKind.Laps:
                Length least = reader.Length("least");
                Length? end = reader.OptionalLength("leastEnd");
                return reader.Make(() => HoldPointReading.OfLaps(least, end, by, at));
            case HoldPointKind.Creases:
                int creases = reader.Count("left");
                return reader.Make(() => HoldPointReading.OfCreases(creases, by, at));
            case HoldPointKind.Bubbles:
                int bubbles = reader.Count("left");
                return reader.Make(() => HoldPointReading.OfBubbles(bubbles, by, at));
            case HoldPointKind.Thickness:
                AcceptanceByReadings thickness = reader.Object("thickness", inner => ReadThickness(inner, rules));
                return reader.Make(() => HoldPointReading.OfThickness(thickness, by, at));
            default:
                bool good = reader.Word("found", Good, NotGood) == Good;
                return reader.Make(() => point switch
                {
                    HoldPointKind.Welds => HoldPointReading.OfWelds(good, by, at),
                    HoldPointKind.RollDown => HoldPointReading.OfRollDown(good, by, at),
                    _ => HoldPointReading.OfEnds(good, by, at),
                });
        }
    }

    internal static void Write(FormWriter writer, HoldPointReading reading, RuleSet rules)
    {
        writer.Word("point", reading.Kind, InspectionWords.HoldPoints);
        writer.Text("by", reading.By);
        writer.Time("at", reading.At);
        switch (reading.Kind)
        {
            case HoldPointKind.TrialPatch:
                writer.Object("patch", reading.Patch!, TrialPatchForm.Write);
                break;
            case HoldPointKind.Cleaning:
                writer.Object("surface", reading.Surface!, SurfaceReadingForm.Write);
                break;
            case HoldPointKind.Contact:
                writer.Measure("ratio", reading.Measured!.Value);
                break;
            case HoldPointKind.Laps:
                writer.Measure("least", reading.Measured!.Value);
                if (reading.EndLap is { } end)
                {
                    writer.Measure("leastEnd", end);
                }

                break;
            case HoldPointKind.Creases or HoldPointKind.Bubbles:
                writer.Count("left", (int)reading.Measured!.Value.Number);
                break;
            case HoldPointKind.Thickness:
                writer.Object("thickness", reading.Thickness!, (inner, thickness) => WriteThickness(inner, thickness, rules));
                break;
            default:
                writer.Text("found", reading.IsGood ? Good : NotGood);
                break;
        }
    }

    private static AcceptanceByReadings? ReadThickness(FormReader reader, RuleSet rules)
    {
        AcceptanceRule rule = reader.Word("rule", InspectionWords.Acceptances);
        string subject = reader.Text("subject");
        double nominal = reader.Number("nominal", TradeUnit.Micrometer);
        double? most = reader.OptionalNumber("most", TradeUnit.Micrometer);
        SamplingCount? wanted = reader.OptionalObject("wanted", ReadCount);
        IReadOnlyList<double> readings = reader.Numbers("readings", TradeUnit.Micrometer);
        return reader.Make(() => new AcceptanceByReadings(
            readings.Select(static um => Length.FromMicrometers(um)), Length.FromMicrometers(nominal), rule, rules, subject, wanted,
            most is { } given ? Length.FromMicrometers(given) : null));
    }

    private static void WriteThickness(FormWriter writer, AcceptanceByReadings thickness, RuleSet rules)
    {
        writer.Word("rule", thickness.Rule, InspectionWords.Acceptances);
        writer.Text("subject", thickness.Subject);
        writer.Number("nominal", thickness.NominalUm, TradeUnit.Micrometer);
        if (thickness.MostUm.IsSet)
        {
            writer.Number("most", thickness.MostUm.Bare, TradeUnit.Micrometer);
        }

        if (thickness.Wanted is { } wanted)
        {
            writer.Object("wanted", wanted, WriteCount);
        }

        writer.Numbers("readings", thickness.ValuesUm, TradeUnit.Micrometer);
        var again = new AcceptanceByReadings(thickness.Values, thickness.Nominal, thickness.Rule, rules, thickness.Subject, thickness.Wanted, thickness.Most);
        if (!again.Equals(thickness))
        {
            throw new ArgumentException($"{writer.Place}: the thickness readings were judged by other rules than those of the record, and would be read back with other findings.", nameof(thickness));
        }
    }

    private static SamplingCount? ReadCount(FormReader reader)
    {
        SamplingScheme scheme = reader.Word("scheme", InspectionWords.Schemes);
        Area area = reader.Area("area");
        return reader.Make(() => new SamplingCount(scheme, area));
    }

    private static void WriteCount(FormWriter writer, SamplingCount count)
    {
        writer.Word("scheme", count.Scheme, InspectionWords.Schemes);
        writer.Area("area", count.Area);
    }
}
