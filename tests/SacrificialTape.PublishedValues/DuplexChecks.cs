using SacrificialTape.Provenance;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.PublishedValues;

/// <summary>Paint over hot-dip zinc: worked examples that were printed.</summary>
internal static class DuplexChecks
{
    internal static CheckGroup Group => new(
        "Life of zinc and paint together",
        "Worked examples of hot-dip zinc. They show that the arithmetic is the trade's; they say nothing of foil on adhesive.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        yield return Case("overview", "zinc 15 a, paint 10 a, extreme", 35, 0.5, Evidence.From(References.DuplexOverview),
            static () => Life(15, 10, DuplexFactor.TechnicalPaper).Earliest.Duration.Years365);
        yield return Case("article-2013", "zinc 40 a, paint 10 a, lowest", 75, 0.5, Evidence.From(Sources.DuplexArticle),
            static () => Life(40, 10, DuplexFactor.AfterVanEijnsbergen).Earliest.Duration.Years365);
        yield return Case("galvanizer/lowest", "zinc 70 a, paint 10 a, lowest", 120, 0.5, Evidence.From(Sources.DuplexGalvanizer),
            static () => Life(70, 10, DuplexFactor.TradeAssociation).Earliest.Duration.Years365);
        yield return Case("galvanizer/highest", "zinc 70 a, paint 10 a, highest", 184, 0.5, Evidence.From(Sources.DuplexGalvanizer),
            static () => Life(70, 10, DuplexFactor.TradeAssociation).Latest.Duration.Years365);
        yield return Case("association/highest", "zinc 70 a, paint 10 a, highest", 220, 0.5, Evidence.From(References.DuplexTradeAssociation),
            static () => Life(70, 10, DuplexFactor.TradeAssociation).Latest.Duration.Years365) with
        {
            KnownDisagreement = "the page prints 220 years, but its own factor gives 2.3 x 80 = 184",
        };
        yield return Factor("van-eijnsbergen/lowest", "lowest factor of the general rule", 1.5, static () => DuplexFactor.AfterVanEijnsbergen.Lowest);
        yield return Factor("van-eijnsbergen/highest", "highest factor of the general rule", 2.5, static () => DuplexFactor.AfterVanEijnsbergen.Highest);
    }

    private static PublishedCase Factor(string id, string what, double expected, Func<double> compute) =>
        Case(id, what, expected, 0, Evidence.From(References.DuplexVanEijnsbergen), compute) with { Unit = "factor" };

    private static DuplexLife Life(double zinc, double paint, DuplexFactor factor) =>
        new(Ask.Years(zinc), Ask.Years(zinc), new PaintFilm(Ask.Years(paint), Ask.Years(paint)), [factor]);

    private static PublishedCase Case(string id, string what, double expected, double tolerance, Evidence evidence, Func<double> compute) => new()
    {
        Id = "duplex/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = "a",
        Compute = compute,
    };
}
