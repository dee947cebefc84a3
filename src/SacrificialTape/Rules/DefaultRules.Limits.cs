using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <content>Limits that hurt people or structures.</content>
internal static partial class DefaultRules
{
    private const string AskEngineer = "Ask a qualified engineer first";
    private const string NoLife = "Give no reliance to any life here";

    private static IEnumerable<Rule> Hazards() =>
    [
        Minimum(RuleIds.AcidStop, "pH of what wets the zinc", 5.5, TradeUnit.One, Severity.Stop,
            Basis.From(References.ZincWaterSheet, "one source has the steep rise only below pH 4, others want 6 or 6.5: sources disagree"),
            "Do not tape: acid dissolves zinc and frees hydrogen. Find out what wets it and take a lining made for that."),
        Minimum(RuleIds.AcidWarning, "pH of what wets the zinc", 6, TradeUnit.One, Severity.Warning,
            Basis.From(References.ZincHandbookWater, "others put the lower end at 5.5 or 6.5: sources disagree"),
            "The rate of the open air does not hold: measure it in this water. " + NoLife + "."),
        Maximum(RuleIds.AlkalineWarning, "pH of what wets the zinc", 11, TradeUnit.One, Severity.Warning,
            Basis.Judgement("upper ends read are 8 to 9, 12 and 12.5, and zinc joined to steel lost most at pH 9 to 11: sources disagree"),
            "The rate of the open air does not hold: measure it in this water. " + NoLife + "."),
        Maximum(RuleIds.AlkalineStop, "pH of what wets the zinc", 12.5, TradeUnit.One, Severity.Stop,
            Basis.From(References.ZincWaterSheet, "others say 12, one 8 to 9: sources disagree"),
            "Do not tape: strong alkali dissolves zinc and frees hydrogen. Find out what wets it and take a lining made for that."),
        Statement(RuleIds.ReversingWater, "Water that favours zinc turning cathodic to steel", Severity.Warning,
            Basis.From(References.ReversalIons, "sources read name 60 and 70 degC, but films of this kind may also form more slowly below"),
            "Have the water tested (bicarbonate, nitrate, chloride, sulfate, oxygen) and its temperature found. Do not rely on zinc to protect bare steel in it. " + NoLife + "."),
        Statement(RuleIds.CopperCouple, "Copper or a copper alloy touches the taped steel within reach of the same water", Severity.Warning,
            Basis.From(References.NobleMetals, "0.58 to 0.78 V to zinc, worked out; a galvanizers' association finds little harm in most open air, more under water"),
            "Part the metals with an insulating piece, or paint the copper; what runs off copper harms zinc below it too. " + NoLife + "."),
        Statement(RuleIds.StainlessContact, "Stainless steel touches the taped steel within reach of the same water", Severity.Warning,
            Basis.From(References.NobleMetals, "0.88 to 1.03 V to zinc, worked out; small zinc beside large stainless steel is the worst"),
            "Part the metals with an insulating piece, or paint the stainless steel. Keep zinc off stainless pressure parts and off what hangs above them: molten zinc cracks them in fire or welding. " + NoLife + "."),
        Statement(RuleIds.CopperEarthing, "A copper earthing grid is joined to this steel", Severity.Warning,
            Basis.Judgement("through soil or water the zinc feeds the whole grid, which draws far more than the steel does"),
            AskEngineer + ", one qualified in earthing and corrosion. Never open an earth connection to save zinc. " + NoLife + "."),
        Statement(RuleIds.CathodicProtection, "This steel, or steel joined to it, is under cathodic protection", Severity.Stop,
            Basis.Judgement("tape adds an anode, shields the steel and shifts measured potentials; in many places such a system is required by law"),
            AskEngineer + ", the one who answers for the system, before anything is bonded to the steel or its isolating joints are touched."),
        Statement(RuleIds.StrayCurrent, "Stray current may pass through this steel", Severity.Stop,
            Basis.FirstPrinciples("an ampere that leaves through zinc takes 10.7 kg of it a year, by Faraday's law"),
            AskEngineer + ", one qualified in stray current: no tape lasts against it, and joints may carry dangerous voltage."),
        Statement(RuleIds.UnderInsulation, "The tape lies under thermal insulation", Severity.Warning,
            Basis.From(References.CorrosionUnderInsulation, "that no corrosivity category holds there is judgement; NACE SP0198 is recalled to advise against zinc there from 50 to 150 degC, check before use"),
            "Ask a qualified engineer for a coating made for it. The category is not that of the site. " + NoLife + ". Test old insulation for asbestos before it is touched."),
        Statement(RuleIds.SweatingLine, "The surface is often below the dew point and sweats", Severity.Warning,
            Basis.Judgement("it is wet when all round it is dry, and with little carbon dioxide and no rain; the category of the site does not hold"),
            "Tape only while it is dry and stays dry. Measure the rate on the line itself. " + NoLife + "."),
        Statement(RuleIds.ShelteredUnderside, "A sheltered side that rain does not wash", Severity.Warning,
            Basis.Judgement("salt and dirt stay and keep it wet; categories are those of open, rain-washed panels"),
            "Take the rate of a worse category or measure it there, wash and inspect that side first. " + NoLife + " until then."),
        Statement(RuleIds.ClampCrevice, "Clamps or supports hold water against the tape", Severity.Warning,
            Basis.From(References.WetStorageStain, "read of stacked galvanized steel; that a clamp is like it is judgement"),
            "Drain or seal the gap, lay a sound liner, inspect there first. Loosen no clamp without the word of whoever is responsible. " + NoLife + " at the clamp."),
        Statement(RuleIds.BuriedTape, "The tape is buried", Severity.Warning,
            Basis.Judgement("no rate or life of foil on adhesive in soil was found: outside the evidence"),
            "Do not rely on it without a trial in that soil; buried pipe belongs to those qualified in coating and cathodic protection. " + NoLife + "."),
        Statement(RuleIds.ImmersedTape, "The tape is under water", Severity.Warning,
            Basis.Judgement("no rate or life of foil on adhesive under water was found: outside the evidence"),
            "Do not rely on it without a trial in that water. In sea water zinc can charge even middling steel with hydrogen: state the strength, ask a qualified engineer. " + NoLife + "."),
        Statement(RuleIds.AlkalineContact, "Concrete, mortar or another alkaline body lies against the tape", Severity.Warning,
            Basis.From(References.MortarOnZinc, "joined to steel, zinc lost most at pH 9 to 11 by another source: sources disagree"),
            "End the tape above it, seal the joint, and let fresh concrete set and dry first. " + NoLife + " there."),
        Statement(RuleIds.HotWorkPlanned, "Welding, cutting or heating of this steel is planned", Severity.Warning,
            Basis.From(References.ZincOxideLimits, "limits differ and local law decides"),
            "Do the hot work first, or remove the tape well clear of it, adhesive too, and mark taped steel. Ventilate: zinc fume OSHA 5 mg/m3 (8 h), NIOSH 5 and 10 (short term), ACGIH 2 and 10 (respirable). Follow the hot-work permit."),
    ];

    private static IEnumerable<Rule> Strength() =>
    [
        Maximum(RuleIds.MaximumTensileStrength, "Tensile strength of the steel", 1100, TradeUnit.Megapascal, Severity.Stop,
            Basis.From(References.HighStrengthFasteners, "the same text has the sharp rise at 1200 MPa; the safer number is taken"),
            "Zinc can charge this steel with hydrogen until it cracks. " + AskEngineer + "; under water do so for weaker steel too."),
        Maximum(RuleIds.MaximumHardness, "Hardness of the steel", 320, TradeUnit.VickersHardness, Severity.Stop,
            Basis.From(References.FastenerHardness, "365 HV in the same edition for another case; 390 HV in the 2018 edition and 350 HV for bolts under cathodic protection are recalled, check before use: editions disagree, the safest is taken"),
            "Zinc can charge this steel with hydrogen until it cracks. " + AskEngineer + "; mind hard spots at welds."),
    ];

    private static IEnumerable<Rule> BesideAndOver() =>
    [
        Statement(RuleIds.LifeWithoutBareSteel, "The life of this line leaves out the zinc that feeds bare steel beside it", Severity.Note,
            Basis.FirstPrinciples("the zinc at the end loses by its own corrosion and by the demand of the steel, so it goes sooner than the life says"),
            "Work out the life of the zinc at the end from its widths, and inspect it first."),
        Statement(RuleIds.DuplexFactorOfHotDip, "The life of zinc and paint together rests on factors of hot-dip zinc", Severity.Warning,
            Basis.From(References.DuplexOverview, "1.4 to 2.7; others read say 1.5 to 2.3 and 1.5 to 2.5: sources disagree at both ends, and none speaks of foil on adhesive"),
            "Plan with the zinc alone and take what paint adds as a gift. No alkyd or oil paint next to zinc."),
        Statement(RuleIds.AlkydOnZinc, "Alkyd or oil paint next to zinc", Severity.Warning,
            Basis.From(References.Saponification, "the trade's common practice says the same: no alkyd directly on zinc"),
            "Take a primer made for galvanized steel: such paint turns to soap on zinc and peels."),
    ];
}
