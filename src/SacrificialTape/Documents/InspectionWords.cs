using SacrificialTape.Inspection;
using SacrificialTape.SiteConditions;

namespace SacrificialTape.Documents;

/// <summary>The words by which documents of inspections name choices. A closed list in each: a word that is not in it is refused.</summary>
internal static class InspectionWords
{
    internal static readonly IReadOnlyList<(string Word, SamplingScheme Value)> Schemes =
    [
        ("ISO 19840", SamplingScheme.Iso19840), ("SSPC-PA 2", SamplingScheme.SspcPa2),
        ("AS 3894.3", SamplingScheme.As38943), ("IMO PSPC", SamplingScheme.ImoPspc),
    ];

    internal static readonly IReadOnlyList<(string Word, AcceptanceRule Value)> Acceptances =
        [("80-20", AcceptanceRule.EightyTwenty), ("90/10", AcceptanceRule.NinetyTen)];

    internal static readonly IReadOnlyList<(string Word, HoldPointKind Value)> HoldPoints =
    [
        ("trial patch", HoldPointKind.TrialPatch), ("cleaning", HoldPointKind.Cleaning), ("contact", HoldPointKind.Contact),
        ("welds", HoldPointKind.Welds), ("laps", HoldPointKind.Laps), ("roll down", HoldPointKind.RollDown),
        ("creases", HoldPointKind.Creases), ("bubbles", HoldPointKind.Bubbles), ("ends", HoldPointKind.EndDirection),
        ("thickness", HoldPointKind.Thickness),
    ];

    internal static readonly IReadOnlyList<(string Word, TrialPatchFailure Value)> Failures =
    [
        ("within the adhesive", TrialPatchFailure.WithinAdhesive), ("foil tore", TrialPatchFailure.FoilTore),
        ("clean off the surface", TrialPatchFailure.CleanOffSurface), ("took paint or scale", TrialPatchFailure.TookPaintOrScale),
    ];

    internal static readonly IReadOnlyList<(string Word, SurfaceWetness Value)> Wetness =
        [("dry", SurfaceWetness.Dry), ("damp", SurfaceWetness.Damp), ("wet", SurfaceWetness.Wet)];

    internal static readonly IReadOnlyList<(string Word, CleaningGrade Value)> Cleaning =
    [
        ("St 2", CleaningGrade.St2), ("St 3", CleaningGrade.St3), ("Sa 1", CleaningGrade.Sa1), ("Sa 2", CleaningGrade.Sa2),
        ("Sa 2 1/2", CleaningGrade.Sa2Half), ("Sa 3", CleaningGrade.Sa3), ("Wa 1", CleaningGrade.Wa1), ("Wa 2", CleaningGrade.Wa2),
        ("Wa 2 1/2", CleaningGrade.Wa2Half),
    ];

    internal static readonly IReadOnlyList<(string Word, FlashRust Value)> FlashRusts =
        [("none", FlashRust.None), ("light", FlashRust.Light), ("medium", FlashRust.Medium), ("heavy", FlashRust.Heavy)];

    internal static readonly IReadOnlyList<(string Word, SurfaceResidue Value)> Residues =
        [("oil", SurfaceResidue.Oil), ("wax", SurfaceResidue.Wax), ("silicone", SurfaceResidue.Silicone), ("bitumen", SurfaceResidue.Bitumen)];

    internal static readonly IReadOnlyList<(string Word, ProfileComparator Value)> Comparators =
        [("grit", ProfileComparator.Grit), ("shot", ProfileComparator.Shot)];

    internal static readonly IReadOnlyList<(string Word, PaintSoundness Value)> Paint =
    [
        ("bare", PaintSoundness.Bare), ("sound and roughened", PaintSoundness.SoundAndRoughened),
        ("sound but smooth", PaintSoundness.SoundButSmooth), ("loose", PaintSoundness.Loose),
    ];
}
