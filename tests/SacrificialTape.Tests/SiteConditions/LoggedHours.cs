using FsCheck.Xunit;

namespace SacrificialTape.Tests.SiteConditions;

[Properties(MaxTest = 200)]
public sealed class LoggedHours
{
    private static readonly DateTimeOffset Begin = new(2025, 3, 29, 6, 0, 0, TimeSpan.FromHours(1));

    [Property]
    public void A_stricter_rule_never_opens_more_hours(int seed, byte which)
    {
        SiteLog log = Log(seed, 60, gaps: true);
        (string Id, double Number, TradeUnit Unit)[] stricter =
        [
            (RuleIds.MinimumDewPointMargin, 5, TradeUnit.Kelvin), (RuleIds.MaximumHumidity, 70, TradeUnit.Percent),
            (RuleIds.MinimumApplicationTemperature, 14, TradeUnit.DegreeCelsius), (RuleIds.MaximumLayingTemperature, 22, TradeUnit.DegreeCelsius),
            (RuleIds.MinimumDryBefore, 4, TradeUnit.Hour), (RuleIds.MinimumDwell, 3.5, TradeUnit.Hour), (RuleIds.MaximumWind, 4, TradeUnit.MeterPerSecond),
        ];
        (string id, double number, TradeUnit unit) = stricter[which % stricter.Length];
        HashSet<DateTimeOffset> before = Open(new WorkWindows(log, RuleSet.Default, "site"));
        HashSet<DateTimeOffset> after = Open(new WorkWindows(log, With(id, new Measure(number, unit)), "site"));
        Assert.Subset(before, after);
    }

    [Property]
    public void Every_hour_is_in_a_window_or_has_a_reason(int seed)
    {
        SiteLog log = Log(seed, 60, gaps: true);
        var found = new WorkWindows(log, RuleSet.Default, "site");
        HashSet<DateTimeOffset> open = Open(found);
        var outside = found.Outside.Where(static one => one.Reasons.All(static reason => reason.Rule.Id != RuleIds.LogGap)).Select(static one => one.Start).ToHashSet();
        Assert.Empty(open.Intersect(outside));
        Assert.Equal(log.Hours.Select(static hour => hour.Start).Order(), open.Union(outside).Order());
        Assert.All(found.Outside, static one => Assert.NotEmpty(one.Reasons));
        Assert.All(found.Windows, static window => Assert.Equal(window.End - window.Start, TimeSpan.FromHours(window.Length.Hours)));
        Near.Equal(open.Count, found.Open.Hours, 1e-15);
    }

    [Property]
    public void Windows_by_a_plain_second_telling(int seed)
    {
        // Hour by hour from the stamps, without counting on neighbours in a list.
        SiteLog log = Log(seed, 48, gaps: true);
        var by = log.Hours.ToDictionary(static hour => hour.Start.UtcDateTime);
        bool? Dry(DateTime at) => !by.TryGetValue(at, out SiteHour? hour) ? null
            : hour.Rain == true ? false
            : hour.Rain is null || hour.Air is null || hour.SurfaceTemperature is null ? null
            : hour.SurfaceTemperature.Value > hour.Air.DewPoint;
        HashSet<DateTimeOffset> expected =
        [
            .. log.Hours.Where(hour =>
            {
                DateTime at = hour.Start.UtcDateTime;
                return Dry(at) == true && Dry(at.AddHours(-1)) == true && Dry(at.AddHours(-2)) == true && Dry(at.AddHours(1)) == true
                    && hour.Air!.Humidity.Percent < 85 && hour.SurfaceTemperature!.Value.DegreesCelsius is >= 10 and <= 40
                    && hour.SurfaceTemperature.Value.DegreesCelsius - hour.Air.DewPoint.DegreesCelsius >= 3
                    && (hour.Wind is not { } wind || wind.MetersPerSecond <= 10);
            }).Select(static hour => hour.Start),
        ];
        Assert.Equal(expected.Order(), Open(new WorkWindows(log, RuleSet.Default, "site")).Order());
    }

    [Property]
    public void Splitting_a_log_and_joining_it_changes_nothing(int seed, byte where)
    {
        SiteLog log = Log(seed, 40, gaps: true);
        int cut = 1 + (where % (log.Hours.Count - 1));
        SiteLog joined = new SiteLog(log.Hours.Take(cut)).Then(new SiteLog(log.Hours.Skip(cut)));
        var whole = new WorkWindows(log, RuleSet.Default, "site");
        var again = new WorkWindows(joined, RuleSet.Default, "site");
        Assert.Equal(whole.Windows, again.Windows);
        Assert.Equal(whole.Outside, again.Outside);
    }

    [Property]
    public void Another_time_zone_changes_nothing(int seed, sbyte quarters)
    {
        SiteLog log = Log(seed, 40, gaps: true);
        TimeSpan offset = TimeSpan.FromMinutes(15 * (quarters % 56));
        var moved = new SiteLog(log.Hours.Select(hour => new SiteHour(hour.Start.ToOffset(offset), hour.Air, hour.SurfaceTemperature, hour.Rain, hour.Wind)));
        Assert.Equal(
            Open(new WorkWindows(log, RuleSet.Default, "site")).Select(static at => at.UtcDateTime).Order(),
            Open(new WorkWindows(moved, RuleSet.Default, "site")).Select(static at => at.UtcDateTime).Order());
    }

    [Property]
    public void Leaving_a_value_out_never_opens_an_hour(int seed, byte which, byte what)
    {
        SiteLog log = Log(seed, 40, gaps: false);
        int at = which % log.Hours.Count;
        SiteHour hour = log.Hours[at];
        SiteHour less = (what % 3) switch
        {
            0 => new(hour.Start, null, hour.SurfaceTemperature, hour.Rain, hour.Wind),
            1 => new(hour.Start, hour.Air, null, hour.Rain, hour.Wind),
            _ => new(hour.Start, hour.Air, hour.SurfaceTemperature, null, hour.Wind),
        };
        var poorer = new SiteLog(log.Hours.Select(one => one == hour ? less : one));
        Assert.Subset(Open(new WorkWindows(log, RuleSet.Default, "site")), Open(new WorkWindows(poorer, RuleSet.Default, "site")));
    }

    [Fact]
    public void A_dry_day_opens_after_its_known_dry_hours_and_closes_before_its_last()
    {
        var found = new WorkWindows(new SiteLog(Enumerable.Range(0, 10).Select(static at => Fine(at))), RuleSet.Default, "site");
        WorkWindow only = Assert.Single(found.Windows);
        Assert.Equal(Begin.AddHours(2), only.Start);
        Assert.Equal(Begin.AddHours(9), only.End);
        Assert.Equal("2025-03-29 08:00 +01:00 to 2025-03-29 15:00 +01:00, 7 h", only.ToString());
        Assert.All(found.Outside, static one => Assert.Equal(HourState.NotKnown, one.State));
        Assert.Equal("1 window(s), 7 h of 10 h", found.ToString());
    }

    [Fact]
    public void Rain_closes_the_hour_before_it_and_the_dry_time_after_it()
    {
        var found = new WorkWindows(new SiteLog(Enumerable.Range(0, 12).Select(static at => Fine(at, rain: at == 5))), RuleSet.Default, "site");
        Assert.Equal(["2025-03-29 08:00 +01:00 to 2025-03-29 10:00 +01:00, 2 h", "2025-03-29 14:00 +01:00 to 2025-03-29 17:00 +01:00, 3 h"], found.Windows.Select(static one => one.ToString()));
        Dictionary<DateTimeOffset, string[]> why = found.Outside.ToDictionary(static one => one.Start, static one => one.Reasons.Select(static reason => reason.Rule.Id).ToArray());
        Assert.Equal([RuleIds.MinimumDwell], why[Begin.AddHours(4)]);
        Assert.Contains(RuleIds.RainNow, why[Begin.AddHours(5)]);
        Assert.Equal([RuleIds.MinimumDryBefore], why[Begin.AddHours(6)]);
        Assert.Equal([RuleIds.MinimumDryBefore], why[Begin.AddHours(7)]);
    }

    [Fact]
    public void A_gap_is_not_known_and_not_bridged()
    {
        var found = new WorkWindows(new SiteLog(Enumerable.Range(0, 14).Where(static at => at != 6).Select(static at => Fine(at))), RuleSet.Default, "site");
        Assert.Equal([2.0 + 1, 4], found.Windows.Select(static one => one.Length.Hours));
        OutsideHour gap = Assert.Single(found.Outside, static one => one.Reasons[0].Rule.Id == RuleIds.LogGap);
        Assert.Equal((Begin.AddHours(6), Begin.AddHours(7), HourState.NotKnown), (gap.Start, gap.End, gap.State));
    }

    [Fact]
    public void Clocks_that_change_leave_no_gap_and_no_double_hour()
    {
        // In the night to 30 March 2025 the clock jumps from 02:00 +01:00 to 03:00 +02:00: one hour follows the other.
        DateTimeOffset first = new(2025, 3, 30, 0, 0, 0, TimeSpan.FromHours(1));
        var spring = new SiteLog(Enumerable.Range(0, 6).Select(at => Fine(first.AddHours(at).ToOffset(TimeSpan.FromHours(at < 2 ? 1 : 2)))));
        Assert.Equal(3, Assert.Single(new WorkWindows(spring, RuleSet.Default, "site").Windows).Length.Hours);

        // In autumn 02:00 stands twice, told apart by the offset.
        DateTimeOffset autumn = new(2025, 10, 26, 1, 0, 0, TimeSpan.FromHours(2));
        var fall = new SiteLog(Enumerable.Range(0, 6).Select(at => Fine(autumn.AddHours(at).ToOffset(TimeSpan.FromHours(at < 2 ? 2 : 1)))));
        Assert.Equal(3, Assert.Single(new WorkWindows(fall, RuleSet.Default, "site").Windows).Length.Hours);

        // The same with an offset that was not changed: the hour stands twice, and is refused.
        ArgumentException twice = Assert.Throws<ArgumentException>(() => new SiteLog([Fine(autumn), Fine(autumn.AddHours(1)), Fine(autumn.AddHours(1))]));
        Assert.Contains("stands twice", twice.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_logs_are_refused()
    {
        Assert.Contains("at least one hour", Assert.Throws<ArgumentException>(static () => new SiteLog([])).Message, StringComparison.Ordinal);
        Assert.Contains("sort the log", Assert.Throws<ArgumentException>(static () => new SiteLog([Fine(2), Fine(1)])).Message, StringComparison.Ordinal);
        Assert.Contains("begins before it ended", Assert.Throws<ArgumentException>(static () => new SiteLog([Fine(Begin), Fine(Begin.AddMinutes(30))])).Message, StringComparison.Ordinal);
        Errors.Refused(static () => new SiteHour(Begin, null, Temperature.FromDegreesCelsius(500), false), "surfaceTemperature", "500 degC");
        Errors.Refused(static () => new SiteHour(Begin, null, null, false, Speed.FromMetersPerSecond(-1)), "wind", "-1 m/s");
    }

    [Fact]
    public void A_surface_by_its_offset_is_the_air_and_the_offset()
    {
        var air = new MoistAir(Temperature.FromDegreesCelsius(12), RelativeHumidity.FromPercent(60));
        Near.Equal(9.5, SiteHour.WithSurfaceOffset(Begin, air, TemperatureDelta.FromKelvins(-2.5), false).SurfaceTemperature!.Value.DegreesCelsius, 1e-14);
    }

    [Fact]
    public void Dew_is_wet_even_where_a_team_asks_for_no_margin()
    {
        RuleSet lax = With(RuleIds.MinimumDewPointMargin, new Measure(-20, TradeUnit.Kelvin)).With("lax", "1", RuleSet.Default[RuleIds.MaximumHumidity].WithLimit(new Measure(101, TradeUnit.Percent), Basis.Judgement("for this test")));
        var air = new MoistAir(Temperature.FromDegreesCelsius(15), RelativeHumidity.FromPercent(95));
        var log = new SiteLog(Enumerable.Range(0, 8).Select(at => new SiteHour(Begin.AddHours(at), air, Temperature.FromDegreesCelsius(13), false)));
        var found = new WorkWindows(log, lax, "site");
        Assert.Empty(found.Windows);
        Assert.All(found.Outside, static one => Assert.Contains(one.Reasons, static reason => reason.Rule.Id == RuleIds.SurfaceNotDry));
    }

    private static RuleSet With(string id, Measure limit) =>
        RuleSet.Default.With("of a test", "1", RuleSet.Default[id].WithLimit(limit, Basis.Judgement("for this test")));

    private static HashSet<DateTimeOffset> Open(WorkWindows found) =>
        [.. found.Windows.SelectMany(static window => Enumerable.Range(0, (int)window.Length.Hours).Select(at => window.Start.AddHours(at)))];

    private static SiteHour Fine(int at, bool rain = false) => Fine(Begin.AddHours(at), rain);

    private static SiteHour Fine(DateTimeOffset at, bool rain = false) => new(
        at, new MoistAir(Temperature.FromDegreesCelsius(18), RelativeHumidity.FromPercent(60)), Temperature.FromDegreesCelsius(17), rain);

    private static SiteLog Log(int seed, int count, bool gaps)
    {
        var random = new Random(seed);
        bool wet = false;
        var hours = new List<SiteHour>();
        for (int at = 0; at < count; at++)
        {
            wet = random.Next(8) == 0 ? !wet : wet;
            double celsius = 6 + (random.NextDouble() * 20);
            MoistAir? air = random.Next(20) == 0 ? null : new(Temperature.FromDegreesCelsius(celsius), RelativeHumidity.FromPercent(35 + (random.NextDouble() * 50)));
            Temperature? surface = random.Next(20) == 0 ? null : Temperature.FromDegreesCelsius(celsius + (random.NextDouble() * 8) - 2);
            bool? rain = random.Next(20) == 0 ? null : wet && random.Next(3) == 0;
            Speed? wind = random.Next(3) == 0 ? null : Speed.FromMetersPerSecond(random.NextDouble() * 11);
            if (!gaps || random.Next(25) != 0 || hours.Count == 0)
            {
                hours.Add(new SiteHour(Begin.AddHours(at), air, surface, rain, wind));
            }
        }

        return new SiteLog(hours);
    }
}
