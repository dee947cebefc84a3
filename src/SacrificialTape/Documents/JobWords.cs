using SacrificialTape.Contact;
using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>The words by which documents of jobs name choices. A closed list in each: a word that is not in it is refused.</summary>
internal static class JobWords
{
    internal static readonly IReadOnlyList<(string Word, ApplicationMethod Value)> Methods =
        [("by hand", ApplicationMethod.ByHand), ("wrapping head", ApplicationMethod.WrappingHead)];

    internal static readonly IReadOnlyList<(string Word, LapConvention Value)> LapConventions =
    [
        ("true lap", LapConvention.TrueLap), ("lap along pipe", LapConvention.LapAlongPipe),
        ("marks", LapConvention.LapBetweenMarks), ("advance", LapConvention.Advance),
    ];

    internal static readonly IReadOnlyList<(string Word, SpiralHand Value)> SpiralHands = [("right", SpiralHand.Right), ("left", SpiralHand.Left)];

    internal static readonly IReadOnlyList<(string Word, PanelDirection Value)> PanelDirections =
        [("along width", PanelDirection.AlongWidth), ("along height", PanelDirection.AlongHeight)];

    internal static readonly IReadOnlyList<(string Word, ShellDirection Value)> ShellDirections =
        [("round", ShellDirection.Round), ("along axis", ShellDirection.AlongAxis)];

    internal static readonly IReadOnlyList<(string Word, CorrugatedDirection Value)> CorrugatedDirections =
        [("along flutes", CorrugatedDirection.AlongFlutes), ("across flutes", CorrugatedDirection.AcrossFlutes)];

    internal static readonly IReadOnlyList<(string Word, SectionPattern Value)> SectionPatterns =
        [("round outline", SectionPattern.RoundOutline), ("face by face", SectionPattern.FaceByFace)];

    internal static readonly IReadOnlyList<(string Word, ShellAxis Value)> Axes = [("upright", ShellAxis.Upright), ("lying", ShellAxis.Lying)];

    internal static readonly IReadOnlyList<(string Word, StrapFaces Value)> Faces = [("outer", StrapFaces.Outer), ("both", StrapFaces.Both)];

    internal static readonly IReadOnlyList<(string Word, FlangeParts Value)> FlangeParts =
        [("rim", Surfaces.FlangeParts.Rim), ("back", Surfaces.FlangeParts.Back), ("front", Surfaces.FlangeParts.Front)];

    internal static readonly IReadOnlyList<(string Word, HollowCorners Value)> HollowCorners =
    [
        ("measured", Surfaces.HollowCorners.Measured), ("hot finished", Surfaces.HollowCorners.HotFinished),
        ("cold formed", Surfaces.HollowCorners.ColdFormed),
    ];

    internal static readonly IReadOnlyList<(string Word, StayClearKind Value)> StayClearKinds =
    [
        ("isolating joint", StayClearKind.IsolatingJoint), ("earth bond", StayClearKind.EarthBond), ("weep hole", StayClearKind.WeepHole),
        ("inspection point", StayClearKind.InspectionPoint), ("name plate", StayClearKind.NamePlate),
        ("flanged joint", StayClearKind.FlangedJoint), ("moving part", StayClearKind.MovingPart),
    ];

    internal static readonly IReadOnlyList<(string Word, SubstrateMetal Value)> Metals =
    [
        ("carbon steel", SubstrateMetal.CarbonSteel), ("high-strength steel", SubstrateMetal.HighStrengthSteel),
        ("stainless steel", SubstrateMetal.StainlessSteel), ("aluminium", SubstrateMetal.Aluminium), ("magnesium", SubstrateMetal.Magnesium),
    ];

    internal static readonly IReadOnlyList<(string Word, LineOrientation Value)> Orientations =
        [("horizontal", LineOrientation.Horizontal), ("vertical", LineOrientation.Vertical)];

    internal static readonly IReadOnlyList<(string Word, SiteHazard Value)> Hazards =
    [
        ("reversing water", SiteHazard.ReversingWater), ("copper couple", SiteHazard.CopperCouple),
        ("stainless contact", SiteHazard.StainlessContact), ("copper earthing", SiteHazard.CopperEarthing),
        ("cathodic protection", SiteHazard.CathodicProtection), ("stray current", SiteHazard.StrayCurrent),
        ("under insulation", SiteHazard.UnderInsulation), ("sweating line", SiteHazard.SweatingLine),
        ("sheltered underside", SiteHazard.ShelteredUnderside), ("clamp crevice", SiteHazard.ClampCrevice),
        ("buried", SiteHazard.Buried), ("immersed", SiteHazard.Immersed), ("alkaline contact", SiteHazard.AlkalineContact),
        ("hot work planned", SiteHazard.HotWorkPlanned),
    ];

    internal static readonly IReadOnlyList<(string Word, UnderTape Value)> UnderTape =
    [
        ("sound paint", Contact.UnderTape.SoundPaint), ("tight mill scale", Contact.UnderTape.TightMillScale),
        ("tight rust", Contact.UnderTape.TightRust),
    ];

    internal static readonly IReadOnlyList<(string Word, ExposureMedium Value)> Media =
        [("air", ExposureMedium.Air), ("water", ExposureMedium.Water), ("soil", ExposureMedium.Soil)];

    internal static readonly IReadOnlyList<(string Word, CorrosivityCategory Value)> Categories =
    [
        ("C1", CorrosivityCategory.C1), ("C2", CorrosivityCategory.C2), ("C3", CorrosivityCategory.C3),
        ("C4", CorrosivityCategory.C4), ("C5", CorrosivityCategory.C5), ("CX", CorrosivityCategory.CX),
    ];

    internal static readonly IReadOnlyList<(string Word, SoilModel Value)> SoilModels =
        [("reinforced fill", SoilModel.ReinforcedFill), ("power law", SoilModel.PowerLaw)];

    internal static readonly IReadOnlyList<(string Word, StripPurpose Value)> Purposes =
    [
        ("spiral", StripPurpose.Spiral), ("level turn", StripPurpose.LevelTurn), ("ring", StripPurpose.Ring),
        ("along pipe", StripPurpose.AlongPipe), ("weld", StripPurpose.Weld), ("other", StripPurpose.Other),
        ("along section", StripPurpose.AlongSection), ("edge", StripPurpose.Edge), ("corner patch", StripPurpose.CornerPatch),
        ("strap", StripPurpose.Strap), ("washer", StripPurpose.Washer), ("patch", StripPurpose.Patch),
    ];

    internal static readonly IReadOnlyList<(string Word, LabourMeasure Value)> LabourMeasures =
        [("area", LabourMeasure.Area), ("strip length", LabourMeasure.StripLength), ("pieces", LabourMeasure.Pieces)];
}
