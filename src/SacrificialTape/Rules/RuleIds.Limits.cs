namespace SacrificialTape.Rules;

/// <content>Limits that hurt people or structures.</content>
public static partial class RuleIds
{
    /// <summary>Lowest pH of what wets the zinc before its loss has to be looked into.</summary>
    public const string AcidWarning = "hazard.acid.warning";

    /// <summary>Lowest pH of what wets the zinc.</summary>
    public const string AcidStop = "hazard.acid.stop";

    /// <summary>Highest pH of what wets the zinc before its loss has to be looked into.</summary>
    public const string AlkalineWarning = "hazard.alkaline.warning";

    /// <summary>Highest pH of what wets the zinc.</summary>
    public const string AlkalineStop = "hazard.alkaline.stop";

    /// <summary>Water that favours zinc turning cathodic to steel.</summary>
    public const string ReversingWater = "hazard.reversing-water";

    /// <summary>Copper or its alloys joined to the taped steel within reach of the same water.</summary>
    public const string CopperCouple = "hazard.copper-couple";

    /// <summary>Stainless steel joined to the taped steel within reach of the same water.</summary>
    public const string StainlessContact = "hazard.stainless-contact";

    /// <summary>A copper earthing grid joined to the steel.</summary>
    public const string CopperEarthing = "hazard.copper-earthing";

    /// <summary>Cathodic protection on the steel.</summary>
    public const string CathodicProtection = "hazard.cathodic-protection";

    /// <summary>Stray current.</summary>
    public const string StrayCurrent = "hazard.stray-current";

    /// <summary>Tape under thermal insulation.</summary>
    public const string UnderInsulation = "hazard.under-insulation";

    /// <summary>A line that sweats.</summary>
    public const string SweatingLine = "hazard.sweating-line";

    /// <summary>A sheltered side that rain does not wash.</summary>
    public const string ShelteredUnderside = "hazard.sheltered-underside";

    /// <summary>Clamps that hold water against the tape.</summary>
    public const string ClampCrevice = "hazard.clamp-crevice";

    /// <summary>Tape in soil.</summary>
    public const string BuriedTape = "hazard.buried";

    /// <summary>Tape under water.</summary>
    public const string ImmersedTape = "hazard.immersed";

    /// <summary>Concrete or another alkaline body against the tape.</summary>
    public const string AlkalineContact = "hazard.alkaline-contact";

    /// <summary>Hot work on taped steel is planned.</summary>
    public const string HotWorkPlanned = "hazard.hot-work";

    /// <summary>Highest tensile strength of steel under zinc.</summary>
    public const string MaximumTensileStrength = "substrate.tensile-strength.maximum";

    /// <summary>Greatest hardness of steel under zinc.</summary>
    public const string MaximumHardness = "substrate.hardness.maximum";

    /// <summary>The life of a line leaves out the zinc that feeds bare steel beside it.</summary>
    public const string LifeWithoutBareSteel = "life.without-bare-steel";

    /// <summary>A factor of hot-dip zinc is used for paint over foil.</summary>
    public const string DuplexFactorOfHotDip = "life.duplex-factor";

    /// <summary>Alkyd or oil paint next to zinc.</summary>
    public const string AlkydOnZinc = "paint.alkyd-on-zinc";
}
