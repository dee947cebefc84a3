namespace SacrificialTape.Rules;

/// <content>Zinc beside bare steel.</content>
public static partial class RuleIds
{
    /// <summary>Bare steel left beside a tape end.</summary>
    public const string BareMarginBesideTape = "galvanic.bare-margin.maximum";

    /// <summary>The earliest life of zinc beside bare steel falls short of the required life.</summary>
    public const string HolidayLifeMayFallShort = "galvanic.holiday-life.may-fall-short";

    /// <summary>Even the latest life of zinc beside bare steel falls short of the required life.</summary>
    public const string HolidayLifeFallsShort = "galvanic.holiday-life.falls-short";

    /// <summary>The capacity of a cast anode alloy is used for rolled foil.</summary>
    public const string CastAlloyCapacity = "galvanic.cast-alloy-capacity";

    /// <summary>The capacity was only recalled.</summary>
    public const string RecalledCapacity = "galvanic.recalled-capacity";

    /// <summary>Copper earthing, cathodic protection and stray currents change what zinc does.</summary>
    public const string OtherElectricalSystems = "galvanic.other-systems";

    /// <summary>A bare gap is wider than zinc protects.</summary>
    public const string GapNotProtected = "reach.gap-not-protected";

    /// <summary>A criterion made for immersed steel is used under a thin film.</summary>
    public const string ImmersionCriterionUnderFilm = "reach.immersion-criterion";

    /// <summary>Thickest film for the width of the bare gap.</summary>
    public const string FilmNotThin = "reach.film-not-thin";

    /// <summary>Zinc holds the steel below the potential that its criterion allows.</summary>
    public const string PotentialTooLow = "reach.potential-too-low";
}
