namespace SacrificialTape.Rules;

/// <summary>The names of the rules that this library evaluates.</summary>
public static partial class RuleIds
{
    /// <summary>Least lap between neighbouring strips, measured across the strip.</summary>
    public const string MinimumLap = "lap.minimum";

    /// <summary>Least lap of a ring on itself and of a new roll on the old.</summary>
    public const string MinimumEndLap = "lap.end.minimum";

    /// <summary>Steepest angle between strip and circumference.</summary>
    public const string MaximumSpiralAngle = "lay.spiral-angle.maximum";

    /// <summary>Widest strip on a wrapping head.</summary>
    public const string MaximumStripWidthOnWrappingHead = "lay.wrapping-head.strip-width.maximum";

    /// <summary>Most pucker of a strip's edge on the outside of a curve.</summary>
    public const string MaximumPucker = "lay.pucker.maximum";

    /// <summary>Most stretch of a strip's edge on the inside of a curve.</summary>
    public const string MaximumStretch = "lay.stretch.maximum";

    /// <summary>Least reach of a weld strip beyond the weld on each side.</summary>
    public const string MinimumWeldReach = "weld.reach.minimum";

    /// <summary>A spiral strains the strip on a bend more than allowed: rings instead.</summary>
    public const string RingsInstead = "lay.bend-spiral.rings-instead";

    /// <summary>How much narrower than set a lap may come out on site, because the hand wanders.</summary>
    public const string HandWander = "lay.hand-wander";

    /// <summary>Fewest layers over every spot of the surface that the survey line asks for.</summary>
    public const string LayersAsked = "lay.layers-everywhere.asked";

    /// <summary>Thinnest foil stocked.</summary>
    public const string MinimumFoilThickness = "tape.foil-thickness.minimum";

    /// <summary>Thickest foil stocked.</summary>
    public const string MaximumFoilThickness = "tape.foil-thickness.maximum";

    /// <summary>Narrowest strip stocked.</summary>
    public const string MinimumStripWidth = "tape.strip-width.minimum";

    /// <summary>Widest strip stocked.</summary>
    public const string MaximumStripWidth = "tape.strip-width.maximum";

    /// <summary>Highest continuous service temperature of the adhesive.</summary>
    public const string AdhesiveServiceTemperature = "tape.adhesive-temperature.maximum";

    /// <summary>Wet service temperature from which zinc may lose its polarity towards steel: look into it.</summary>
    public const string WetTemperatureWarning = "service.wet-temperature.warning";

    /// <summary>Wet service temperature from which zinc may turn cathodic to steel: do not use it.</summary>
    public const string WetTemperatureStop = "service.wet-temperature.stop";

    /// <summary>Wet in service, at a temperature that the survey does not state.</summary>
    public const string WetTemperatureUnknown = "service.wet-temperature.unknown";

    /// <summary>Zinc on aluminium.</summary>
    public const string Aluminium = "substrate.aluminium";

    /// <summary>Zinc on magnesium.</summary>
    public const string Magnesium = "substrate.magnesium";

    /// <summary>Zinc on stainless steel.</summary>
    public const string StainlessSteel = "substrate.stainless-steel";

    /// <summary>Zinc on high-strength steel.</summary>
    public const string HighStrengthSteel = "substrate.high-strength-steel";

    /// <summary>Least bare steel under the tape over paint.</summary>
    public const string MinimumBareRatio = "contact.bare-ratio.minimum";

    /// <summary>Bare steel judged on the average, positions unknown.</summary>
    public const string WindowPositionsUnknown = "contact.positions-unknown";

    /// <summary>Old paint may hold lead or chromate.</summary>
    public const string OldPaint = "substrate.old-paint";

    /// <summary>A facing film that does not conduct.</summary>
    public const string FacingFilm = "tape.facing-film";

    /// <summary>A film-faced strip along a weld, under the main lay.</summary>
    public const string FacingFilmUnderLay = "tape.facing-film-under-lay";

    /// <summary>Least overlap of a patch all round its cut-out. Carried for teams; nothing evaluates it yet.</summary>
    public const string MinimumPatchMargin = "patch.margin.minimum";

    /// <summary>Share of the foil counted as usable before perforation ends its life.</summary>
    public const string UsableFraction = "life.usable-fraction";

    /// <summary>The earliest life falls short of the required life.</summary>
    public const string LifeMayFallShort = "life.may-fall-short";

    /// <summary>Even the latest life falls short of the required life.</summary>
    public const string LifeFallsShort = "life.falls-short";

    /// <summary>No published life of foil on adhesive exists.</summary>
    public const string NoPublishedLife = "life.no-published-evidence";

    /// <summary>The earliest life rests on bounds of a category that were only recalled.</summary>
    public const string RecalledCategory = "life.recalled-category";

    /// <summary>A number that the latest life rests on was only recalled.</summary>
    public const string RecalledLifeValue = "life.recalled-value";

    /// <summary>A life runs past the end of a measured curve of loss.</summary>
    public const string LossCurveExtrapolated = "life.curve-extrapolated";

    /// <summary>A first-year rate was only recalled.</summary>
    public const string RecalledRate = "exposure.recalled-rate";

    /// <summary>A dose-response function was used outside the data that it was fitted to.</summary>
    public const string RateBeyondFit = "exposure.beyond-fit";

    /// <summary>A rate lies above the highest corrosivity category.</summary>
    public const string RateAboveCategories = "exposure.above-categories";

    /// <summary>By how much a time may differ from a year and its loss still count as that of the first year.</summary>
    public const string FirstYearTolerance = "exposure.first-year-tolerance";

    /// <summary>A rate of zinc under water.</summary>
    public const string ImmersedZinc = "exposure.immersed";

    /// <summary>A rate of zinc or steel in soil.</summary>
    public const string BuriedMetal = "exposure.buried";

    /// <summary>Shortest piece of strip worth splicing in.</summary>
    public const string ShortestPiece = "take-off.shortest-piece";

    /// <summary>A piece that should be whole is longer than a roll.</summary>
    public const string PieceWithinRoll = "take-off.piece-within-roll";

    /// <summary>Least diameter of what a foil is bent round, in foil thicknesses.</summary>
    public const string MinimumWrapDiameter = "lay.wrap-diameter.minimum";

    /// <summary>Least radius of an edge that a foil is folded over, in foil thicknesses.</summary>
    public const string MinimumFoldRadius = "lay.fold-radius.minimum";

    /// <summary>Margin on each side of an isolating joint.</summary>
    public const string IsolatingJointMargin = "clear.isolating-joint.margin.minimum";

    /// <summary>Margin round an earth bond.</summary>
    public const string EarthBondMargin = "clear.earth-bond.margin.minimum";

    /// <summary>Margin round a weep hole.</summary>
    public const string WeepHoleMargin = "clear.weep-hole.margin.minimum";

    /// <summary>Margin round an inspection point.</summary>
    public const string InspectionPointMargin = "clear.inspection-point.margin.minimum";

    /// <summary>Margin round a name plate.</summary>
    public const string NamePlateMargin = "clear.name-plate.margin.minimum";

    /// <summary>Margin beside a flanged joint.</summary>
    public const string FlangedJointMargin = "clear.flanged-joint.margin.minimum";

    /// <summary>Margin round a moving part.</summary>
    public const string MovingPartMargin = "clear.moving-part.margin.minimum";

    /// <summary>An isolating joint that is marked as a spot, so that tape beside the spot bridges it.</summary>
    public const string IsolatingJointBridged = "clear.isolating-joint.bridged";

    /// <summary>Steel that is left clear draws on the zinc beside it.</summary>
    public const string SteelLeftClear = "clear.steel-left-clear";
}
