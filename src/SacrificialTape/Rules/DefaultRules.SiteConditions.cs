using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>The site and the surface before tape is laid.</content>
internal static partial class DefaultRules
{
    private const string Solvents = "Mind fire and fumes of solvents: ventilate, no sparks, gloves, by the data sheet and the site's permit.";

    private static IEnumerable<Rule> SiteConditions() => [.. Weather(), .. BareSurface()];

    private static IEnumerable<Rule> Weather() =>
    [
        Minimum(RuleIds.MinimumDewPointMargin, "Surface above the dew point", 3, TradeUnit.Kelvin, Severity.Stop,
            Basis.From(References.DewPointMargin, "paint practice, taken over for tape; others are recalled to ask 5 degF, 2.8 K"),
            "Wait until it warms or dries; a dry look proves nothing near the dew point."),
        Below(RuleIds.MaximumHumidity, "Relative humidity", 85, TradeUnit.Percent, Severity.Stop,
            Basis.From(References.DewPointMargin, "paint practice, taken over for tape; another rule is recalled to allow 85 % itself"),
            "Wait, or dry the air at the work."),
        Minimum(RuleIds.MinimumApplicationTemperature, "Surface temperature for laying", 10, TradeUnit.DegreeCelsius, Severity.Stop,
            Basis.From(References.AdhesiveApplicationGuidance, "general guidance for pressure-sensitive tape says 4 to 10 degC, some 15 degC: sources disagree; the data sheet of the tape goes before"),
            "Wait for warmer steel, or warm it by a means that the site's permit allows; no open flame near solvents."),
        Maximum(RuleIds.MaximumLayingTemperature, "Surface temperature while laying", 40, TradeUnit.DegreeCelsius, Severity.Stop,
            Basis.Judgement("hands press the strip on, and warm adhesive grips before it is placed; replace it by the tape's data sheet and the site's rule on touching hot metal"),
            "Hot pipe burns: let it cool under the site's permit before anyone works on it, and find out what is in it."),
        Maximum(RuleIds.MaximumWind, "Wind at the work", 10, TradeUnit.MeterPerSecond, Severity.Warning,
            Basis.Judgement("wide strip flies, and dust flies onto the adhesive; replace it by the site's rule for work at height"),
            "Wait or screen the work. Foil edges cut: hold no loose strip in wind at height."),
        Statement(RuleIds.RainNow, "It rains", Severity.Stop, Basis.FirstPrinciples("rain wets the surface; the trade lays on completely dry steel"),
            "Wait, or shelter the work."),
        Minimum(RuleIds.MinimumDryBefore, "Time that the surface has been dry", 2, TradeUnit.Hour, Severity.Stop,
            Basis.Judgement("water hides in pits, laps of paint and crevices; calibrate with blotting paper on the worst spot"),
            "Wait until it has dried out, and test the worst spot."),
        Minimum(RuleIds.MinimumDwell, "Time that the tape stays dry after laying", 1, TradeUnit.Hour, Severity.Warning,
            Basis.Judgement("adhesives build up their bond in minutes to 72 h; half in 20 minutes and nine tenths in a day is recalled, check before use; edges must hold before water stands at them"),
            "Lay less, roll down at once, or shelter it; press the edges down again after rain."),
        Statement(RuleIds.HourNotKnown, "Not enough is known of this hour", Severity.Warning,
            Basis.FirstPrinciples("what was not measured is not taken as good"), "Measure air, surface and rain at the work before it begins."),
        Statement(RuleIds.LogGap, "A gap in the log", Severity.Warning,
            Basis.FirstPrinciples("what was not logged is not taken as good"), "Find the missing hours, or treat them as unfit; look at clock changes first."),
    ];

    private static IEnumerable<Rule> BareSurface() =>
    [
        Statement(RuleIds.SurfaceNotMeasured, "Not measured", Severity.Warning,
            Basis.FirstPrinciples("what was not measured is not taken as good"), "Measure it before laying."),
        Statement(RuleIds.SurfaceNotDry, "The surface is not completely dry", Severity.Stop, Practice, "Dry it and find out why it was wet."),
        Minimum(RuleIds.MinimumToolCleaning, "Grade of cleaning by tool, St", 2, TradeUnit.One, Severity.Stop,
            Basis.CommonPractice("wire-brushed by machine, degreased; that St 2 comes nearest is judgement"),
            "Brush again. Have old paint tested for lead and chromate before anyone brushes it: its dust is a poison."),
        Minimum(RuleIds.MinimumBlastCleaning, "Grade of cleaning by blasting, Sa", 2, TradeUnit.One, Severity.Stop,
            Basis.Judgement("light blasting leaves scale and rust that the adhesive does not touch steel through"),
            "Blast again, or brush to St 2. Dust of blasting and of old paint is a poison: follow the local rules on it."),
        Minimum(RuleIds.MinimumJetCleaning, "Grade of cleaning by water jet, Wa", 2, TradeUnit.One, Severity.Stop,
            Basis.Judgement("as for blasting; flash rust counts besides"),
            "Jet again, or brush to St 2. A jet cuts flesh: trained hands only, under the site's permit."),
        Maximum(RuleIds.MaximumFlashRust, "Flash rust, 0 none to 3 heavy", 1, TradeUnit.One, Severity.Stop,
            Basis.Judgement("rust that marks a hand comes off with the tape"), "Brush it off and wipe."),
        Maximum(RuleIds.MaximumDustQuantity, "Dust, quantity rating", 1, TradeUnit.One, Severity.Stop,
            Basis.From(References.DustLimit, "a paint rule, taken over for tape"), "Wipe or vacuum again; do not blow with an air line that carries oil."),
        Maximum(RuleIds.MaximumDustSize, "Dust, size class", 2, TradeUnit.One, Severity.Warning,
            Basis.Judgement("class 3 begins at particles that hold foil off steel: larger than an adhesive of a few hundredths of a millimetre is thick"),
            "Wipe again; look under a strip of clear tape."),
        Statement(RuleIds.OilOnSurface, "Oil or grease on the surface", Severity.Stop, Practice, "Degrease before brushing, wipe after it. " + Solvents),
        Statement(RuleIds.WaxOnSurface, "Wax on the surface", Severity.Stop,
            Basis.Judgement("adhesive does not hold on wax or petrolatum, and brushing spreads it"), "Take it off with scraper and solvent before anything is brushed. " + Solvents),
        Statement(RuleIds.SiliconeOnSurface, "Silicone on the surface", Severity.Stop,
            Basis.Judgement("adhesive lets go of silicone, and wiping spreads it"), "Find where it comes from, take it off, and prove it with a trial patch. " + Solvents),
        Statement(RuleIds.BitumenOnSurface, "Bitumen or coal tar on the surface", Severity.Stop,
            Basis.Judgement("bitumen creeps and parts the adhesive from the steel"), "Take it off to bare steel. Old tar coatings may hold asbestos and tar compounds that harm: have them tested first."),
        Maximum(RuleIds.MaximumSalts, "Soluble salts on the surface", 50, TradeUnit.MilligramPerSquareMeter, Severity.Stop,
            Basis.From(References.SaltLimit, "a rule for ballast tanks, taken over; offshore rules are recalled to ask 20, projects 30 or 100: sources disagree"),
            "Wash with clean water, dry, and measure again."),
        Maximum(RuleIds.MaximumProfile, "Height of the profile", 100, TradeUnit.Micrometer, Severity.Warning,
            Basis.Judgement("peaks far above a thin adhesive carry the foil and leave channels for water; calibrate with a trial patch"),
            "Press a trial patch on and lift it: where the print of the steel is not whole, take a thicker adhesive."),
        Statement(RuleIds.LoosePaint, "Loose paint on the surface", Severity.Stop, Practice,
            "Take off what is loose. Have it tested for lead and chromate before anyone scrapes it: its dust is a poison."),
        Statement(RuleIds.SmoothPaint, "Sound paint that is not roughened", Severity.Warning, Practice,
            "Clean and roughen it. Test it for lead and chromate first."),
    ];
}
