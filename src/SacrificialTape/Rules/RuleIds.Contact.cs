namespace SacrificialTape.Rules;

/// <content>Windows and strips at their places over paint, tight scale and tight rust; voltage lost; readings.</content>
public static partial class RuleIds
{
    /// <summary>Least bare steel under the tape in any one square metre, windows at their places.</summary>
    public const string BareRatioInMetre = "contact.bare-ratio-in-metre.minimum";

    /// <summary>Least area that counts as touching, of a strip on bare steel and of a lap.</summary>
    public const string LeastContactArea = "contact.touching-area.least";

    /// <summary>Strips that touch no bare steel, neither themselves nor through laps.</summary>
    public const string StripsWithoutSteel = "contact.strips-without-steel";

    /// <summary>A lay that does not know where its strips lie.</summary>
    public const string StripPlacesUnknown = "contact.strip-places-unknown";

    /// <summary>Strips that are spliced over a facing film.</summary>
    public const string SpliceOverFilm = "contact.splice-over-film";

    /// <summary>Largest distance from a covered point to the nearest window.</summary>
    public const string MaximumWindowDistance = "contact.window-distance.maximum";

    /// <summary>No window at all.</summary>
    public const string NoWindow = "contact.no-window";

    /// <summary>Tight scale or rust under the tape.</summary>
    public const string ScaleAsPaint = "contact.scale-as-paint";

    /// <summary>Taking paint off at windows.</summary>
    public const string PaintAtWindows = "contact.paint-at-windows";

    /// <summary>Edges of windows, and windows that the tape does not cover.</summary>
    public const string WindowEdges = "contact.window-edges";

    /// <summary>Most voltage lost between zinc and steel, as a share of the driving voltage.</summary>
    public const string MaximumVoltageShare = "contact.voltage-share.maximum";

    /// <summary>Voltage lost, judged with the resistance of a fresh joint.</summary>
    public const string FreshAdhesive = "contact.adhesive-fresh";

    /// <summary>Zinc does not drive current to this steel.</summary>
    public const string NoDrivingVoltage = "contact.no-driving-voltage";

    /// <summary>Most resistance of a window or a strip to the steel, as read.</summary>
    public const string MaximumContactResistance = "contact.resistance.maximum";

    /// <summary>Published bonding limits are no requirement of corrosion.</summary>
    public const string BondingLimits = "contact.bonding-limits";
}
