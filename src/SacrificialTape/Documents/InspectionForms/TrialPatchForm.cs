using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a trial patch is read and written. What was not measured is left out.</summary>
internal static class TrialPatchForm
{
    internal static TrialPatch? Read(FormReader reader)
    {
        double wanted = reader.Number("wantedPeel", TradeUnit.NewtonPerMillimeter);
        double allowed = reader.Number("allowedResistance", TradeUnit.OhmSquareCentimeter);
        double? peel = reader.OptionalNumber("peel", TradeUnit.NewtonPerMillimeter);
        double? resistance = reader.OptionalNumber("resistance", TradeUnit.OhmSquareCentimeter);
        TrialPatchFailure? failure = reader.Members.OptionalWord("failure", InspectionWords.Failures);
        return reader.Make(() => new TrialPatch(
            ForcePerLength.FromNewtonsPerMillimeter(wanted),
            FormReader.At("allowedResistance", () => ContactResistivity.FromOhmSquareCentimeters(allowed)),
            peel is { } pulled ? ForcePerLength.FromNewtonsPerMillimeter(pulled) : null,
            resistance is { } measured ? FormReader.At("resistance", () => ContactResistivity.FromOhmSquareCentimeters(measured)) : null,
            failure));
    }

    internal static void Write(FormWriter writer, TrialPatch patch)
    {
        writer.Number("wantedPeel", patch.WantedPeelNmm, TradeUnit.NewtonPerMillimeter);
        writer.Number("allowedResistance", patch.AllowedResistance.OhmSquareCentimeters, TradeUnit.OhmSquareCentimeter);
        if (patch.PeelNmm.IsSet)
        {
            writer.Number("peel", patch.PeelNmm.Bare, TradeUnit.NewtonPerMillimeter);
        }

        if (patch.Resistance is { } resistance)
        {
            writer.Number("resistance", resistance.OhmSquareCentimeters, TradeUnit.OhmSquareCentimeter);
        }

        if (patch.Failure is { } failure)
        {
            writer.Word("failure", failure, InspectionWords.Failures);
        }
    }
}
