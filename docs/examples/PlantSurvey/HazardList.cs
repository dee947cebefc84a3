using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using UnitsNet;

namespace PlantSurvey;

/// <summary>What the survey found round a line: the cells hazards, ph, strength_MPa and hardness_HV.</summary>
internal static class HazardList
{
    internal static readonly string[] Columns = ["hazards", "ph", "strength_MPa", "hardness_HV"];

    private static readonly Dictionary<string, SiteHazard> Words = new()
    {
        ["reversing water"] = SiteHazard.ReversingWater,
        ["copper"] = SiteHazard.CopperCouple,
        ["stainless"] = SiteHazard.StainlessContact,
        ["copper earthing"] = SiteHazard.CopperEarthing,
        ["cathodic protection"] = SiteHazard.CathodicProtection,
        ["stray current"] = SiteHazard.StrayCurrent,
        ["insulation"] = SiteHazard.UnderInsulation,
        ["sweating"] = SiteHazard.SweatingLine,
        ["sheltered"] = SiteHazard.ShelteredUnderside,
        ["clamp"] = SiteHazard.ClampCrevice,
        ["buried"] = SiteHazard.Buried,
        ["immersed"] = SiteHazard.Immersed,
        ["concrete"] = SiteHazard.AlkalineContact,
        ["hot work"] = SiteHazard.HotWorkPlanned,
    };

    internal static LineHazards? Read(CsvRow row)
    {
        var found = new List<SiteHazard>();
        foreach (string word in row.TextOr("hazards", string.Empty).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (!Words.TryGetValue(word, out SiteHazard hazard))
            {
                row.Fault("hazards", $"'{word}' is not one of {string.Join(", ", Words.Keys)}.");
            }
            else if (found.Contains(hazard))
            {
                row.Fault("hazards", $"'{word}' stands twice.");
            }
            else
            {
                found.Add(hazard);
            }
        }

        double? ph = row.OptionalNumber("ph");
        double? strength = row.OptionalNumber("strength_MPa");
        double? hardness = row.OptionalNumber("hardness_HV");
        if (row.Faulty)
        {
            return null;
        }

        // One at a time, so that each refusal stands at its own cell.
        LineHazards? acid = ph is { } p ? row.Try("ph", () => new LineHazards(acidity: Acidity.FromPh(p))) : null;
        LineHazards? hard = hardness is { } hv ? row.Try("hardness_HV", () => new LineHazards(hardness: VickersHardness.FromHv(hv))) : null;
        Pressure? tensile = strength is { } mpa ? Pressure.FromMegapascals(mpa) : null;
        return row.Faulty ? null : row.Try("strength_MPa", () => new LineHazards(new ValueList<SiteHazard>(found), acid?.Acidity, tensile, hard?.Hardness));
    }
}
