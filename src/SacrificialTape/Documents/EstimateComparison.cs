using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>Holds what a file states against what the library in use works out.</summary>
internal static class EstimateComparison
{
    // Other platforms end some last digits apart; a formula that moved shows long before.
    private const double Allowance = 1e-9;

    internal static IEnumerable<EstimateDifference> Of(StatedResults stated, StatedResults now)
    {
        IEnumerable<EstimateDifference> lines = Pairs(stated.Lines, now.Lines, static line => line.Tag).SelectMany(static pair => Line(pair.Stated, pair.Now));
        IEnumerable<EstimateDifference> stocks = Pairs(stated.Stocks, now.Stocks, static stock => stock.Name).SelectMany(static pair => Stock(pair.Stated, pair.Now));
        return Totals(stated.Totals, now.Totals)
            .Concat(Missing(stated.Lines, now.Lines, static line => line.Tag, "line"))
            .Concat(lines)
            .Concat(Missing(stated.Stocks, now.Stocks, static stock => stock.Name, "stock"))
            .Concat(stocks)
            .Concat(Findings("job", stated.Findings, now.Findings))
            .Concat(Text("job, first cost", stated.FirstCost?.ToString() ?? "none", now.FirstCost?.ToString() ?? "none"));
    }

    private static IEnumerable<EstimateDifference> Totals(StatedTotals stated, StatedTotals now) =>
        Number("job, covered", stated.Covered, now.Covered)
            .Concat(Number("job, left clear", stated.LeftClear, now.LeftClear))
            .Concat(Number("job, strip", stated.StripLength, now.StripLength))
            .Concat(Text("job, rolls", Count(stated.Rolls), Count(now.Rolls)))
            .Concat(Number("job, zinc bought", stated.ZincBought, now.ZincBought))
            .Concat(Number("job, zinc laid", stated.ZincLaid, now.ZincLaid));

    private static IEnumerable<EstimateDifference> Line(StatedLine stated, StatedLine now)
    {
        string place = $"line '{stated.Tag}'";
        return Number(place + ", covered", stated.Covered, now.Covered)
            .Concat(Number(place + ", left clear", stated.LeftClear, now.LeftClear))
            .Concat(Number(place + ", strip", stated.StripLength, now.StripLength))
            .Concat(Life(place + ", earliest life", stated.Earliest, now.Earliest))
            .Concat(Life(place + ", latest life", stated.Latest, now.Latest))
            .Concat(Text(place + ", life holds", stated.LifeHolds ? "yes" : "no", now.LifeHolds ? "yes" : "no"))
            .Concat(Findings(place, stated.Findings, now.Findings));
    }

    private static IEnumerable<EstimateDifference> Stock(StatedStock stated, StatedStock now)
    {
        string place = $"stock '{stated.Name}'";
        return Text(place + ", rolls", Count(stated.Rolls), Count(now.Rolls))
            .Concat(Text(place + ", least rolls", Count(stated.LeastRolls), Count(now.LeastRolls)))
            .Concat(Text(place + ", splices", Count(stated.Splices), Count(now.Splices)))
            .Concat(Number(place + ", bought", stated.Bought, now.Bought))
            .Concat(Number(place + ", zinc bought", stated.ZincBought, now.ZincBought))
            .Concat(Number(place + ", zinc laid", stated.ZincLaid, now.ZincLaid));
    }

    // Findings have no name of their own: what stands on one side only is told, in the order of its side.
    private static IEnumerable<EstimateDifference> Findings(string place, ValueList<StatedFinding> stated, ValueList<StatedFinding> now)
    {
        var left = now.ToList();
        foreach (StatedFinding finding in stated)
        {
            int at = left.FindIndex(other => Same(finding, other));
            if (at < 0)
            {
                yield return new($"{place}, finding", finding.Found(), "none");
            }
            else
            {
                left.RemoveAt(at);
            }
        }

        foreach (StatedFinding finding in left)
        {
            yield return new($"{place}, finding", "none", finding.Found());
        }
    }

    private static bool Same(StatedFinding one, StatedFinding other) => one.RuleId == other.RuleId
        && one.Severity == other.Severity && one.Subject == other.Subject && Near(one.Measured, other.Measured) && Near(one.Limit, other.Limit);

    private static IEnumerable<(T Stated, T Now)> Pairs<T>(ValueList<T> stated, ValueList<T> now, Func<T, string> name)
    {
        var known = now.ToDictionary(name, StringComparer.Ordinal);
        return stated.Where(one => known.ContainsKey(name(one))).Select(one => (one, known[name(one)]));
    }

    private static IEnumerable<EstimateDifference> Missing<T>(ValueList<T> stated, ValueList<T> now, Func<T, string> name, string kind)
    {
        var before = stated.Select(name).ToHashSet(StringComparer.Ordinal);
        var after = now.Select(name).ToHashSet(StringComparer.Ordinal);
        return before.Except(after).Select(one => new EstimateDifference($"{kind} '{one}'", "there", "not there"))
            .Concat(after.Except(before).Select(one => new EstimateDifference($"{kind} '{one}'", "not there", "there")));
    }

    private static IEnumerable<EstimateDifference> Number(string place, Measure stated, Measure now) =>
        Near(stated, now) ? [] : [new(place, MeasureText.Exact(stated), MeasureText.Exact(now))];

    private static IEnumerable<EstimateDifference> Life(string place, Lifetime stated, Lifetime now) =>
        stated.IsUnlimited == now.IsUnlimited && (stated.IsUnlimited || Near(stated.Years, now.Years)) ? [] : [new(place, stated.ToString(), now.ToString())];

    private static IEnumerable<EstimateDifference> Text(string place, string stated, string now) => stated == now ? [] : [new(place, stated, now)];

    private static string Count(int count) => FormattableString.Invariant($"{count}");

    private static bool Near(Measure? one, Measure? other) => (one, other) switch
    {
        (null, null) => true,
        ({ } left, { } right) => left.Key.Unit == right.Key.Unit && Near(left.Key.Number, right.Key.Number),
        _ => false,
    };

    private static bool Near(double one, double other) => Math.Abs(one - other) <= Allowance * Math.Max(Math.Abs(one), Math.Abs(other));
}
