using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.SiteConditions;

/// <summary>Goes through a log hour by hour.</summary>
internal static class HourJudge
{
    internal static void Run(SiteLog log, RuleSet rules, string subject, List<WorkWindow> windows, List<OutsideHour> outside)
    {
        ValueList<SiteHour> hours = log.Hours;
        bool?[] dry = [.. hours.Select(static hour => hour.Dry)];
        Rule before = rules[RuleIds.MinimumDryBefore];
        Rule after = rules[RuleIds.MinimumDwell];
        double beforeHours = before.Limit!.Value.In(TradeUnit.Hour);
        double afterHours = after.Limit!.Value.In(TradeUnit.Hour);
        DateTimeOffset? open = null;
        int length = 0;
        for (int i = 0; i < hours.Count; i++)
        {
            if (i > 0 && hours[i].Start > hours[i - 1].End)
            {
                Close(windows, ref open, ref length);
                outside.Add(new OutsideHour(hours[i - 1].End, hours[i].Start, HourState.NotKnown, [rules[RuleIds.LogGap].State(subject)]));
            }

            List<Finding> unfit = [.. Of(hours[i], rules, subject)];
            (double fit, bool met) = DryBefore(hours, dry, i, beforeHours);
            Note(before, fit, met, unfit, subject);
            (double dwell, bool wets) = DryAfter(hours, dry, i, afterHours);
            Note(after, dwell, wets, unfit, subject);
            bool known = Known(hours[i], dry[i]) && (met || Enough(fit, beforeHours)) && (wets || Enough(dwell, afterHours));
            if (unfit.Count == 0 && known)
            {
                open ??= hours[i].Start;
                length++;
                continue;
            }

            Close(windows, ref open, ref length);
            if (!known)
            {
                unfit.Add(rules[RuleIds.HourNotKnown].State(subject));
            }

            bool breaks = unfit.Any(static one => one.Rule.Id != RuleIds.HourNotKnown);
            outside.Add(new OutsideHour(hours[i].Start, hours[i].End, breaks ? HourState.Unfit : HourState.NotKnown, new ValueList<Finding>(unfit)));
        }

        Close(windows, ref open, ref length);
    }

    private static void Close(List<WorkWindow> windows, ref DateTimeOffset? open, ref int length)
    {
        if (open is { } start)
        {
            windows.Add(new WorkWindow(start, length));
        }

        open = null;
        length = 0;
    }

    // A time that ended in water is too short; one that ended in the unknown may be long enough.
    private static void Note(Rule rule, double hours, bool endedInWater, List<Finding> unfit, string subject)
    {
        if (endedInWater && rule.Judge(new Measure(hours, TradeUnit.Hour), subject) is { } tooShort)
        {
            unfit.Add(tooShort);
        }
    }

    private static bool Enough(double hours, double wanted) => WithAllowance.AtLeast(hours, wanted);

    private static bool Known(SiteHour hour, bool? dry) => dry is not null && hour.Air is not null && hour.SurfaceCelsius.IsSet;

    private static IEnumerable<Finding> Of(SiteHour hour, RuleSet rules, string subject)
    {
        IEnumerable<Finding?> air = hour switch
        {
            { Air: { } both, SurfaceCelsius.IsSet: true } => ReadinessRules.Air(both, hour.SurfaceCelsius.Bare, rules, subject),
            { Air: { } only } => [rules[RuleIds.MaximumHumidity].Judge(new Measure(only.Percent, TradeUnit.Percent), subject)],
            { SurfaceCelsius.IsSet: true } => ReadinessRules.Surface(hour.SurfaceCelsius.Bare, rules, subject),
            _ => [],
        };
        foreach (Finding finding in air.OfType<Finding>())
        {
            yield return finding;
        }

        if (hour.Rain == true)
        {
            yield return rules[RuleIds.RainNow].State(subject);
        }
        else if (hour.Dry == false)
        {
            // Dew: also where a team's own rules ask for no margin.
            yield return rules[RuleIds.SurfaceNotDry].State(subject);
        }

        if (hour.WindMetersPerSecond.IsSet
            && rules[RuleIds.MaximumWind].Judge(new Measure(hour.WindMetersPerSecond.Bare, TradeUnit.MeterPerSecond), subject) is { } blown)
        {
            yield return blown;
        }
    }

    // Hours known to be dry right before this one, up to what is wanted; and whether water ended the count.
    private static (double Hours, bool EndedInWater) DryBefore(ValueList<SiteHour> hours, bool?[] dry, int at, double wanted)
    {
        double count = 0;
        for (int i = at - 1; !Enough(count, wanted); i--)
        {
            if (i < 0 || hours[i].End != hours[i + 1].Start || dry[i] is not { } isDry)
            {
                return (count, false);
            }

            if (!isDry)
            {
                return (count, true);
            }

            count++;
        }

        return (count, false);
    }

    private static (double Hours, bool EndedInWater) DryAfter(ValueList<SiteHour> hours, bool?[] dry, int at, double wanted)
    {
        double count = 0;
        for (int i = at + 1; !Enough(count, wanted); i++)
        {
            if (i == hours.Count || hours[i].Start != hours[i - 1].End || dry[i] is not { } isDry)
            {
                return (count, false);
            }

            if (!isDry)
            {
                return (count, true);
            }

            count++;
        }

        return (count, false);
    }
}
