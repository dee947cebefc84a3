using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>The rules of <see cref="RuleSet.Default"/>: numbers of the trade, each with its basis.</summary>
internal static partial class DefaultRules
{
    private static readonly Basis Practice = Basis.CommonPractice();

    internal static IEnumerable<Rule> All() => [.. Lays(), .. TapeStock(), .. Service(), .. Contact(), .. Life(), .. TakeOff(), .. FoilBending(), .. Clear(), .. Faces(), .. Bends(), .. Exposure(), .. Galvanic(), .. Spread(), .. Hazards(), .. Strength(), .. BesideAndOver(), .. Sets(), .. SiteConditions(), .. Sampling(), .. Places(), .. Readings(), .. Patches(), .. ContactAtPlaces()];

    private static IEnumerable<Rule> Lays() =>
    [
        Minimum(RuleIds.MinimumLap, "True lap between neighbouring strips", 10, TradeUnit.Millimeter, Severity.Warning, Practice,
            "Choose a larger lap or a wider strip."),
        Minimum(RuleIds.MinimumEndLap, "Lap of a ring on itself or of a new roll on the old", 10, TradeUnit.Millimeter, Severity.Warning,
            Basis.CommonPractice("the trade says that the strip is cut longer so that it laps, without a figure; the lap between strips is used"),
            "Cut the strip longer."),
        Maximum(RuleIds.MaximumSpiralAngle, "Angle between strip and circumference", 30, TradeUnit.Degree, Severity.Warning,
            Basis.Judgement("a steep strip is hard to keep on its line and its level turns leave gaps; calibrate with a trial wrap"),
            "Take a narrower strip or rings."),
        Maximum(RuleIds.MaximumStripWidthOnWrappingHead, "Strip width on a wrapping head", 150, TradeUnit.Millimeter, Severity.Warning,
            Basis.CommonPractice("a limit of the tool: replace it by your own tool's"), "Take a narrower strip or wrap by hand."),
        Maximum(RuleIds.MaximumPucker, "Pucker of the strip's edge on the outside of a curve", 1, TradeUnit.Percent, Severity.Warning,
            Basis.Judgement("foil wrinkles long before it tears; calibrate with a trial wrap"), "Take a narrower strip."),
        Maximum(RuleIds.MaximumStretch, "Stretch of the strip's edge on the inside of a curve", 3, TradeUnit.Percent, Severity.Warning,
            Basis.Judgement("calibrate with a trial wrap"), "Take a narrower strip."),
        Allowance(RuleIds.HandWander, "How much narrower than set a lap may come out (hand wander)", 2, TradeUnit.Millimeter,
            Basis.Judgement("measure it on a trial wrap; an exact half lap counts as one layer because of it"),
            "Replace it by your own measurement."),
        Statement(RuleIds.LayersAsked, "Layers everywhere are fewer than asked for", Severity.Warning,
            Basis.FirstPrinciples("the least number of strips over any spot, ends and wander included"),
            "Lap more than the exact share, add a pass, or add turns at the ends."),
    ];

    private static IEnumerable<Rule> TapeStock() =>
    [
        Minimum(RuleIds.MinimumFoilThickness, "Foil thickness", 0.08, TradeUnit.Millimeter, Severity.Note, Practice,
            "Check that this foil is really to be had."),
        Maximum(RuleIds.MaximumFoilThickness, "Foil thickness", 0.5, TradeUnit.Millimeter, Severity.Note, Practice,
            "Check that this foil is really to be had; think of two layers."),
        Minimum(RuleIds.MinimumStripWidth, "Strip width", 10, TradeUnit.Millimeter, Severity.Note, Practice,
            "Check that this width is really to be had."),
        Maximum(RuleIds.MaximumStripWidth, "Strip width", 300, TradeUnit.Millimeter, Severity.Note, Practice,
            "Check that this width is really to be had."),
        Maximum(RuleIds.AdhesiveServiceTemperature, "Service temperature of the adhesive", 80, TradeUnit.DegreeCelsius, Severity.Stop, Practice,
            "Do not tape this line. Hot pipe burns: let it cool before anyone works on it, under the site's permit."),
        Statement(RuleIds.FacingFilm, "A facing film that does not conduct lies over the foil", Severity.Warning, Practice,
            "Laps do not conduct and most anode action stops: a barrier first, zinc after. Do not count on it beside bare steel."),
        Statement(RuleIds.FacingFilmUnderLay, "A film-faced strip lies along a weld under the main lay", Severity.Warning, Practice,
            "The film keeps the main lay from touching steel or zinc there: take strip without a film along welds."),
    ];

    private static IEnumerable<Rule> Service() =>
    [
        Below(RuleIds.WetTemperatureWarning, "Wet service temperature", 50, TradeUnit.DegreeCelsius, Severity.Warning,
            Basis.From(References.ZincAnodeTemperature), "Have the water looked at: in warm water zinc can stop protecting steel."),
        Below(RuleIds.WetTemperatureStop, "Wet service temperature", 60, TradeUnit.DegreeCelsius, Severity.Stop,
            Basis.From(References.PolarityReversal, "other sources say 70 degC"),
            "Do not rely on zinc here: it may turn cathodic, and the steel under it corrodes instead. Hot water scalds: work under the site's permit."),
        Statement(RuleIds.WetTemperatureUnknown, "Wet in service, at a temperature that is not stated", Severity.Warning,
            Basis.From(References.PolarityReversal), "Find out how warm the water gets: from 50 degC zinc can stop protecting steel."),
        Statement(RuleIds.Aluminium, "Zinc on aluminium", Severity.Note, Basis.From(References.AluminiumAlkali),
            "Zinc is usually the anode; watch for alkali at the aluminium where it stays wet."),
        Statement(RuleIds.Magnesium, "Zinc on magnesium", Severity.Stop, Basis.From(References.GalvanicSeries),
            "Do not tape: magnesium is the anode and zinc speeds its attack."),
        Statement(RuleIds.StainlessSteel, "Zinc on stainless steel", Severity.Stop,
            Basis.Judgement("molten zinc cracks stressed stainless steel in fire or welding; limits are recalled, check before use"),
            "Do not tape stainless pressure parts without a qualified engineer's word; remove zinc before any hot work."),
        Statement(RuleIds.HighStrengthSteel, "Zinc on high-strength steel", Severity.Stop, Basis.From(References.HighStrengthFasteners),
            "Protective potentials can charge this steel with hydrogen: ask a qualified engineer first."),
    ];

    private static IEnumerable<Rule> Contact() =>
    [
        Minimum(RuleIds.MinimumBareRatio, "Bare steel under the tape", 100, TradeUnit.SquareCentimeterPerSquareMeter, Severity.Warning, Practice,
            "Add contact windows; the figure holds for any one square metre."),
        Statement(RuleIds.WindowPositionsUnknown, "Bare steel is judged on the average, since the survey gives no positions", Severity.Note,
            Basis.CommonPractice("the figure applies to any one square metre"),
            "Spread the windows evenly, so that every square metre and every strip has its share."),
        Statement(RuleIds.OldPaint, "Paint under the tape", Severity.Warning, Practice,
            "Old paint may hold lead or chromate: have it tested before anyone sands or scrapes it, and follow local rules for removal and waste."),
        Minimum(RuleIds.MinimumPatchMargin, "Overlap of a patch round its cut-out", 5, TradeUnit.Millimeter, Severity.Warning,
            Basis.CommonPractice("less than the 10 mm of ordinary laps"), "Cut a larger patch."),
    ];

    private static IEnumerable<Rule> Life() =>
    [
        Allowance(RuleIds.UsableFraction, "Usable share of the foil", 0.8, TradeUnit.One,
            Basis.Judgement("no published figure for thin foil on adhesive; perforation ends the life, not the last gram"),
            "Replace it by your own experience."),
        Statement(RuleIds.LifeMayFallShort, "The earliest life is shorter than required", Severity.Warning,
            Basis.FirstPrinciples("earliest life against required life"),
            "Take thicker foil or one more layer, or narrow the exposure by measurement."),
        Statement(RuleIds.LifeFallsShort, "Even the latest life is shorter than required", Severity.Stop,
            Basis.FirstPrinciples("latest life against required life"), "Take thicker foil or more layers."),
        Statement(RuleIds.NoPublishedLife, "No published life of zinc foil on adhesive was found", Severity.Note,
            Basis.Judgement("lives here are those of the zinc itself; that the adhesive lasts as long is not shown by any document"),
            "Plan inspections."),
        Statement(RuleIds.RecalledCategory, "The earliest life rests on recalled bounds of category CX", Severity.Warning,
            Basis.From(References.CorrosivityCategoryExtreme), "Check them against the document, or measure the rate, before you rely on any life here."),
        Statement(RuleIds.LossCurveExtrapolated, "A life runs past the last point of a measured curve of loss", Severity.Warning,
            Basis.Judgement("beyond its last point a curve goes on straight, as the user chose; nothing measured supports that"),
            "Measure again before the last point is reached."),
        Statement(RuleIds.RecalledLifeValue, "The latest life rests on numbers recalled from a standard", Severity.Note,
            Basis.From(References.PowerLawExponents), "Check them against the document before you rely on the latest life."),
    ];

    private static IEnumerable<Rule> Exposure() =>
    [
        Statement(RuleIds.RecalledRate, "The first-year rate rests on recalled numbers", Severity.Warning,
            Basis.Judgement("a number from memory may be wrong; the basis of the exposure names its document"),
            "Check them against the document, or measure the rate, before you rely on any life here."),
        Statement(RuleIds.RateBeyondFit, "The first-year rate was estimated outside the data behind the function", Severity.Warning,
            Basis.From(References.DoseResponseIntervals), "Expose coupons for a year: beyond its data the function says little."),
        Statement(RuleIds.RateAboveCategories, "The first-year rate may lie above category CX", Severity.Warning,
            Basis.From(References.CorrosivityCategoryExtreme), "The scheme ends there: measure at the site, inspect often."),
        Allowance(RuleIds.FirstYearTolerance, "How far from a year a time may be and its loss still count as the first year's", 0.1, TradeUnit.Year,
            Basis.Judgement("loss slows down and seasons differ: a mean over years is too low for a first year, one over months may be either"),
            "Expose for a whole year, or turn the loss into a first-year rate by a loss law."),
        Statement(RuleIds.ImmersedZinc, "The rate is that of hot-dip zinc under water", Severity.Warning,
            Basis.Judgement("no rate or life of foil on adhesive under water was found, and the loss laws of the open air do not hold there"),
            "Do not rely on tape under water without a trial there; use a constant rate, and heed hardness, chloride, flow, pH and warmth of the water."),
        Statement(RuleIds.BuriedMetal, "The rate is that of metal in soil", Severity.Warning,
            Basis.Judgement("design losses of hot-dip reinforcement in selected fill; no rate or life of foil on adhesive in soil was found, and the loss laws of the open air do not hold there"),
            "Have the soil tested (resistivity, pH, chloride, sulfate, water table) and use a loss law made for soil."),
    ];

    private static IEnumerable<Rule> TakeOff() =>
    [
        Allowance(RuleIds.ShortestPiece, "Shortest piece worth splicing in", 1, TradeUnit.Meter,
            Basis.Judgement("shorter remnants are left as offcuts; calibrate with your crew"), "Replace it by your own."),
        Statement(RuleIds.PieceWithinRoll, "A piece that should be whole is longer than its roll", Severity.Warning,
            Basis.FirstPrinciples("length of the piece against length of the roll"),
            "It is counted with splices: order longer rolls or place the splices where they can be checked."),
    ];

    private static IEnumerable<Rule> FoilBending() =>
    [
        Minimum(RuleIds.MinimumWrapDiameter, "Diameter that the foil is bent round, in foil thicknesses", 100, TradeUnit.One, Severity.Warning,
            Basis.Judgement("the outside of the foil stretches by t/(2r+t), here by about 1 %: a stiffer foil springs back and lifts at its ends; calibrate with a trial wrap"),
            "Take thinner foil, or two layers of it."),
        Minimum(RuleIds.MinimumFoldRadius, "Radius of the edge that the foil is folded over, in foil thicknesses", 5, TradeUnit.One, Severity.Warning,
            Basis.Judgement("the outside of the foil stretches by t/(2r+t), here by about 9 %: a sharper fold may crack, sooner in the cold; calibrate with a trial"),
            "Round the edge, take thinner foil, or end the strip at the edge."),
    ];

    private static IEnumerable<Rule> Clear() =>
    [
        Margin(RuleIds.IsolatingJointMargin, "Margin on each side of an isolating joint", 100, Severity.Warning,
            "zinc, dirt and water must not make a path round the joint; ask whoever looks after the cathodic protection"),
        Margin(RuleIds.EarthBondMargin, "Margin round an earth bond", 50, Severity.Warning, "room to see the lug, loosen it and measure"),
        Margin(RuleIds.WeepHoleMargin, "Margin round a weep hole", 20, Severity.Warning, "the hand wanders, and what comes out must be seen"),
        Margin(RuleIds.InspectionPointMargin, "Margin round an inspection point", 50, Severity.Warning, "room for the gauge and its coupling"),
        Margin(RuleIds.NamePlateMargin, "Margin round a name plate", 10, Severity.Note, "room for its frame and rivets"),
        Margin(RuleIds.FlangedJointMargin, "Margin beside a flanged joint", 50, Severity.Warning, "room for bolts and spanner; measure your own"),
        Margin(RuleIds.MovingPartMargin, "Margin round a moving part", 30, Severity.Warning, "what moves must not catch an edge; measure its whole travel"),
        Statement(RuleIds.IsolatingJointBridged, "An isolating joint is marked as a spot: tape beside the spot would bridge it", Severity.Stop,
            Basis.FirstPrinciples("zinc conducts; a joint that goes all round is bridged by any strip across it"),
            "Mark it as a band all round the pipe, and lay the spans on its two sides each for itself."),
        Statement(RuleIds.SteelLeftClear, "Steel that is left clear has no zinc on it and draws on the zinc beside it", Severity.Note,
            Basis.Judgement("zinc protects bare steel beside it only a little way and is used up sooner there"),
            "Agree with the owner what else protects it, and look at the edges of the tape there first."),
    ];

    private static Rule Margin(string id, string title, double limit, Severity severity, string note) =>
        Minimum(id, title, limit, TradeUnit.Millimeter, severity, Basis.Judgement(note), "Leave a wider margin, or ask whoever is responsible for it.");

    private static Rule Minimum(string id, string title, double limit, TradeUnit unit, Severity severity, Basis basis, string remedy) =>
        new(id, title, RuleKind.Minimum, new Measure(limit, unit), severity, basis, remedy);

    private static Rule Maximum(string id, string title, double limit, TradeUnit unit, Severity severity, Basis basis, string remedy) =>
        new(id, title, RuleKind.Maximum, new Measure(limit, unit), severity, basis, remedy);

    // For what begins at a number: the number itself already breaks the rule.
    private static Rule Below(string id, string title, double limit, TradeUnit unit, Severity severity, Basis basis, string remedy) =>
        new(id, title, RuleKind.Below, new Measure(limit, unit), severity, basis, remedy);

    private static Rule Allowance(string id, string title, double value, TradeUnit unit, Basis basis, string remedy) =>
        new(id, title, RuleKind.Allowance, new Measure(value, unit), Severity.Note, basis, remedy);

    private static Rule Statement(string id, string title, Severity severity, Basis basis, string remedy) =>
        new(id, title, RuleKind.Statement, null, severity, basis, remedy);
}
