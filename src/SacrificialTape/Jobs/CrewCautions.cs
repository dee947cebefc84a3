namespace SacrificialTape.Jobs;

/// <summary>What the crew has to heed on a line with hazards, by judgement; local rules and permits come first.</summary>
internal static class CrewCautions
{
    internal static string For(SurveyLine line)
    {
        LineHazards hazards = line.Steel.Hazards;
        List<string> said = [.. hazards.Present.Select(Of)];
        if (hazards.Acidity is { Ph: < 6 or > 9 } acidity)
        {
            said.Add($"What wets this line has {acidity}: ask what it is, and keep it off skin and eyes.");
        }

        if (line.SteelStaysBareBeside)
        {
            said.Add("Steel stays bare beside a tape end: press that end down hard, and mark it as the first place to inspect.");
        }

        return string.Join(' ', said);
    }

    private static string Of(SiteHazard hazard) => hazard switch
    {
        SiteHazard.ReversingWater => "If the water here is hot, it scalds: follow the site's permit.",
        SiteHazard.CopperCouple or SiteHazard.StainlessContact => "Keep tape off copper, brass and stainless steel.",
        SiteHazard.CopperEarthing => "Never loosen, cut or tape over an earth connection.",
        SiteHazard.CathodicProtection => "Touch no cable or bond of the cathodic protection.",
        SiteHazard.StrayCurrent => "Never open or bridge a joint: with stray current it may spark or shock.",
        SiteHazard.UnderInsulation =>
            "Old insulation may hold asbestos: have it tested before anyone touches it, and follow local rules. Nothing is closed again before the tape was looked at.",
        SiteHazard.SweatingLine => "Lay no tape while the surface sweats: it must be dry and stay dry until the tape is rolled down.",
        SiteHazard.ShelteredUnderside => "Wash salt and dirt off the sheltered side before degreasing.",
        SiteHazard.ClampCrevice => "Loosen no clamp or support without the word of whoever is responsible for the line.",
        SiteHazard.Buried => "Excavations only by permit, shored, and after cables and pipes were traced.",
        SiteHazard.Immersed => "Work at or under water only by permit, never alone, on a dry surface.",
        SiteHazard.AlkalineContact => "Fresh concrete and mortar burn skin and eyes; let them set and dry before tape comes against them.",
        SiteHazard.HotWorkPlanned =>
            "Hot work is planned here: lay no tape where it will be, and mark the taped steel. Before any weld, cut or flame the tape comes off well clear; ventilate, zinc fume makes ill.",
        _ => throw new ArgumentOutOfRangeException(nameof(hazard), hazard, "Not a hazard known here."),
    };
}
