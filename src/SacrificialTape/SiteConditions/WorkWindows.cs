using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>From a log or a forecast, the times in which laying may go on, and for every other hour why not.</summary>
/// <remarks>
/// <para>An hour is in a window when air and surface hold every rule, it does not rain, the surface was dry all through
/// the time before that the rules ask for, and will be dry all through the dwell after it. Dry means no rain and a
/// surface warmer than the dew point.</para>
/// <para>A gap in the log, a value that was not read, and the hours before its start and after its end are not known, and
/// no hour that leans on them is in a window. Where both hold, unfit goes before not known.</para>
/// </remarks>
/// <example><code source="WorkWindowsPage.cs" region="day" /></example>
public sealed record WorkWindows
{
    /// <summary>Finds the windows.</summary>
    /// <param name="log">The log or forecast.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    public WorkWindows(SiteLog log, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        this.Log = log;
        var windows = new List<WorkWindow>();
        var outside = new List<OutsideHour>();
        HourJudge.Run(log, rules, subject, windows, outside);
        this.Windows = new ValueList<WorkWindow>(windows);
        this.Outside = new ValueList<OutsideHour>(outside);
    }

    /// <summary>The log or forecast.</summary>
    public SiteLog Log { get; }

    /// <summary>The times in which laying may go on.</summary>
    public ValueList<WorkWindow> Windows { get; }

    /// <summary>Every other hour and every gap, with its reasons.</summary>
    public ValueList<OutsideHour> Outside { get; }

    /// <summary>All windows together.</summary>
    [Provenance.BasisOf(typeof(WindowSources), nameof(WindowSources.Sum))]
    public Duration Open => Duration.FromHours(this.Windows.Sum(static window => window.Hours));

    /// <summary>How many windows and hours.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Windows.Count} window(s), {this.Windows.Sum(static window => window.Hours)} h of {this.Log.Hours.Count} h");
}
