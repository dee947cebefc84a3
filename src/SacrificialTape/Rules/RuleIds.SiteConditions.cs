namespace SacrificialTape.Rules;

/// <content>The site and the surface before tape is laid.</content>
public static partial class RuleIds
{
    /// <summary>Least margin of the surface over the dew point.</summary>
    public const string MinimumDewPointMargin = "site.dew-point-margin.minimum";

    /// <summary>Relative humidity below which work may go on.</summary>
    public const string MaximumHumidity = "site.humidity.maximum";

    /// <summary>Lowest surface temperature for laying.</summary>
    public const string MinimumApplicationTemperature = "site.application-temperature.minimum";

    /// <summary>Highest surface temperature while laying.</summary>
    public const string MaximumLayingTemperature = "site.laying-temperature.maximum";

    /// <summary>Strongest wind in which strip is laid.</summary>
    public const string MaximumWind = "site.wind.maximum";

    /// <summary>It rains.</summary>
    public const string RainNow = "site.rain";

    /// <summary>How long a surface must have been dry before laying.</summary>
    public const string MinimumDryBefore = "site.dry-before.minimum";

    /// <summary>How long tape must stay dry after laying.</summary>
    public const string MinimumDwell = "site.dwell-before-wet.minimum";

    /// <summary>An hour of a log of which too little is known.</summary>
    public const string HourNotKnown = "site.hour-not-known";

    /// <summary>A gap in a log.</summary>
    public const string LogGap = "site.log-gap";

    /// <summary>Something about a surface was not measured.</summary>
    public const string SurfaceNotMeasured = "surface.not-measured";

    /// <summary>A surface that is not completely dry.</summary>
    public const string SurfaceNotDry = "surface.not-dry";

    /// <summary>Least grade of cleaning by hand or power tool, St.</summary>
    public const string MinimumToolCleaning = "surface.cleaning.tool.minimum";

    /// <summary>Least grade of cleaning by blasting, Sa.</summary>
    public const string MinimumBlastCleaning = "surface.cleaning.blast.minimum";

    /// <summary>Least grade of cleaning by water jet, Wa.</summary>
    public const string MinimumJetCleaning = "surface.cleaning.water-jet.minimum";

    /// <summary>Most flash rust, 0 none to 3 heavy.</summary>
    public const string MaximumFlashRust = "surface.flash-rust.maximum";

    /// <summary>Most dust by quantity.</summary>
    public const string MaximumDustQuantity = "surface.dust-quantity.maximum";

    /// <summary>Largest dust by size class.</summary>
    public const string MaximumDustSize = "surface.dust-size.maximum";

    /// <summary>Oil or grease on the surface.</summary>
    public const string OilOnSurface = "surface.oil";

    /// <summary>Wax on the surface.</summary>
    public const string WaxOnSurface = "surface.wax";

    /// <summary>Silicone on the surface.</summary>
    public const string SiliconeOnSurface = "surface.silicone";

    /// <summary>Bitumen on the surface.</summary>
    public const string BitumenOnSurface = "surface.bitumen";

    /// <summary>Most soluble salts.</summary>
    public const string MaximumSalts = "surface.salts.maximum";

    /// <summary>Highest profile.</summary>
    public const string MaximumProfile = "surface.profile.maximum";

    /// <summary>Loose paint.</summary>
    public const string LoosePaint = "surface.loose-paint";

    /// <summary>Sound paint that was not roughened.</summary>
    public const string SmoothPaint = "surface.smooth-paint";
}
