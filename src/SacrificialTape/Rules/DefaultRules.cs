using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>The rules of <see cref="RuleSet.Default"/>: numbers of the trade, each with its basis.</summary>
internal static partial class DefaultRules
{
    private static readonly Basis Practice = Basis.CommonPractice();

    internal static IEnumerable<Rule> All() => [.. Lays(), .. TapeStock(), .. Service(), .. Contact(), .. Life(), .. TakeOff(), .. Galvanic()];

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
        Maximum(RuleIds.MaximumStripWidthOnHead, "Strip width on a wrapping head", 150, TradeUnit.Millimeter, Severity.Warning,
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
        Statement(RuleIds.RecalledLifeValue, "The latest life rests on numbers recalled from a standard", Severity.Note,
            Basis.From(References.PowerLawExponents), "Check them against the document before you rely on the latest life."),
    ];

    private static IEnumerable<Rule> TakeOff() =>
    [
        Allowance(RuleIds.ShortestPiece, "Shortest piece worth splicing in", 1, TradeUnit.Meter,
            Basis.Judgement("shorter remnants are left as offcuts; calibrate with your crew"), "Replace it by your own."),
        Statement(RuleIds.PieceWithinRoll, "A piece that should be whole is longer than its roll", Severity.Warning,
            Basis.FirstPrinciples("length of the piece against length of the roll"),
            "It is counted with splices: order longer rolls or place the splices where they can be checked."),
    ];

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
