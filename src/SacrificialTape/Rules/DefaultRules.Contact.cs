using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>Windows and strips at their places; voltage lost; readings.</content>
internal static partial class DefaultRules
{
    private static IEnumerable<Rule> ContactAtPlaces() => [.. ContactGeometry(), .. ContactCautions(), .. ContactVoltage()];

    private static IEnumerable<Rule> ContactGeometry() =>
    [
        Minimum(RuleIds.BareRatioInMetre, "Bare steel under the tape in the worst square metre", 100, TradeUnit.SquareCentimeterPerSquareMeter, Severity.Warning, Practice,
            "Add a window there, or move windows so that they lie evenly; the average does not count."),
        Allowance(RuleIds.LeastContactArea, "Least area that counts as touching", 1, TradeUnit.SquareCentimeter,
            Basis.Judgement("a sliver of contact is lost to the hand's wander and to a crease; calibrate with readings from strip to steel"),
            "State another where strips are narrow or laps short."),
        Statement(RuleIds.StripsWithoutSteel, "Strips that touch no bare steel, neither themselves nor through laps that conduct", Severity.Stop,
            Basis.FirstPrinciples("a strip without a way for current to the steel is a sheet of metal on paint, no anode"),
            "Put a window under each, within the part that no neighbour laps. Over a facing film no lap conducts, so that every strip needs its own."),
        Statement(RuleIds.StripPlacesUnknown, "Whether every strip touches bare steel was not looked at: the places of its strips are unknown to this lay", Severity.Warning,
            Basis.FirstPrinciples("a contact that is not known to be there cannot be counted"),
            "Have each strip measured to the steel after laying, or take a lay that knows its places."),
        Statement(RuleIds.SpliceOverFilm, "Strips longer than a roll are spliced, and a splice over a facing film does not conduct", Severity.Warning,
            Basis.FirstPrinciples("the film lies between the two; where the splices fall is not known beforehand"),
            "Treat each piece between splices as a strip of its own: a window under each."),
        Maximum(RuleIds.MaximumWindowDistance, "Distance from a covered point to the nearest window", 700, TradeUnit.Millimeter, Severity.Warning,
            Basis.Judgement("half the diagonal of a square metre, so that each square metre has a window of its own; the voltage lost in the foil allows far more. Calibrate with readings"),
            "Add a window near that point."),
        Statement(RuleIds.NoWindow, "No window: nothing of the tape is known to touch steel", Severity.Stop,
            Basis.FirstPrinciples("the adhesive conducts only where it is pressed onto bare metal"),
            "Lay windows out, or clean the surface to bare steel."),
    ];

    private static IEnumerable<Rule> ContactCautions() =>
    [
        Statement(RuleIds.ScaleAsPaint, "Tight mill scale or rust under the tape is judged as paint is", Severity.Warning,
            Basis.Judgement("neither lets the adhesive touch the steel, and steel bared beside mill scale corrodes fast where it is wet"),
            "Bare the windows to bright metal by grinding or blasting; better, clean the whole surface."),
        Statement(RuleIds.PaintAtWindows, "Paint is taken off at the windows", Severity.Warning,
            Basis.CommonPractice("how depends on what the paint holds; local rules decide"),
            "No burning off and no dry sanding of paint that is not tested: lead and chromate go into lungs and soil. Wet methods or scraping with extraction, breathing protection, collected waste. Hot work, solvents and grinding sparks need a permit where gas or vapour may be."),
        Statement(RuleIds.WindowEdges, "Edges of the windows, and bare steel that the tape does not cover", Severity.Note,
            Basis.CommonPractice("no figure is known"),
            "Feather the paint at the edges so that foil lies down without a bridge, tape the same day before the steel rusts, and repaint what stays bare beside the tape."),
    ];

    private static IEnumerable<Rule> ContactVoltage() =>
    [
        Maximum(RuleIds.MaximumVoltageShare, "Voltage lost between zinc and steel, as a share of the driving voltage", 10, TradeUnit.Percent, Severity.Warning,
            Basis.From(References.AnodeContinuity, "there a share of the resistance of the anode; for tape the idea is carried over to voltage, by judgement"),
            "More or larger windows, thicker foil, or an adhesive that keeps its resistance low."),
        Statement(RuleIds.FreshAdhesive, "The voltage lost was judged with the resistance of a fresh joint: the check says nothing of later years", Severity.Warning,
            Basis.Judgement("pressure, ageing and damp change a conductive adhesive; a fresh coupon is no old one"),
            "Take a resistance measured on an aged joint or in service, or one assumed for the end of life, and say which."),
        Statement(RuleIds.NoDrivingVoltage, "Zinc does not drive current to this steel", Severity.Stop,
            Basis.FirstPrinciples("the potential of the steel is not above that of the zinc"),
            "Check both potentials: what is stated means that the zinc is no anode."),
        Maximum(RuleIds.MaximumContactResistance, "Resistance to the steel as read", 100, TradeUnit.Milliohm, Severity.Warning,
            Basis.From(References.AnodeContinuity, "continuity of anodes and cables, 0.1 ohm; there is none for thin tape"),
            "Roll the tape down and read again with four leads; else a new window beside the old."),
        Statement(RuleIds.BondingLimits, "Limits of bonding are not limits of corrosion", Severity.Note,
            Basis.From(References.LightningBond, "2.5 mohm there is for lightning current; 0.1 ohm, 1 ohm and others elsewhere are for continuity, shock or static. None is a corrosion requirement of a thin zinc tape"),
            "What matters is the voltage lost at the current that flows, against the driving voltage: 0.1 ohm loses 0.1 mV for each mA."),
    ];
}
