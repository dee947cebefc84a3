using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>The formulas of remaining life as the workings show them.</summary>
internal static class RemainingLifeFormulas
{
    internal static Basis RatesOfCodes { get; } = Basis.From(References.ThicknessRates);

    internal static Basis Refit { get; } = Basis.FirstPrinciples("the law is a shape: it is drawn through what was lost by now and followed on");

    private static readonly Basis Student = Basis.From(References.StudentTables, "readings taken as normal and independent");

    private static readonly Symbol Now = new("t_a", "thickness now", TradeUnit.Micrometer);
    private static readonly Symbol Required = new("t_r", "thickness required", TradeUnit.Micrometer);
    private static readonly Symbol Age = new("T", "time since it was laid", TradeUnit.Year);
    private static readonly Symbol Remaining = new("RL", "Remaining life", TradeUnit.Year);
    private static readonly Symbol Loss = new("D", "Thickness lost", TradeUnit.Micrometer);
    private static readonly Symbol Quantile = new("t", "Student's t for the confidence", TradeUnit.One);

    internal static Formula LongTerm { get; } = new(
        "remaining.long-term-rate", new Symbol("r_LT", "Long-term rate", TradeUnit.MicrometerPerYear), "(t_i - t_a) / T", @"\frac{t_i - t_a}{T}", RatesOfCodes,
        [new Symbol("t_i", "thickness supplied", TradeUnit.Micrometer), Now, Age]);

    internal static Formula ShortTerm { get; } = new(
        "remaining.short-term-rate", new Symbol("r_ST", "Short-term rate", TradeUnit.MicrometerPerYear), "(t_p - t_a) / T_p", @"\frac{t_p - t_a}{T_p}", RatesOfCodes,
        [new Symbol("t_p", "thickness at the inspection before", TradeUnit.Micrometer), Now, new Symbol("T_p", "time since that inspection", TradeUnit.Year)]);

    internal static Formula ByRate { get; } = new(
        "remaining.by-rate", Remaining, "(t_a - t_r) / r", @"\frac{t_a - t_r}{r}", RatesOfCodes,
        [Now, Required, new Symbol("r", "rate", TradeUnit.MicrometerPerYear)]);

    internal static Formula PerforationLimit { get; } = new(
        "remaining.perforation-limit", new Symbol("t_r", "Thickness required", TradeUnit.Micrometer), "(1 - u) * f", @"(1 - u)\,f",
        Basis.FirstPrinciples("of each foil only the usable share may go: perforation ends the life, not the last gram"),
        [new Symbol("u", "usable share of the foil", TradeUnit.One), new Symbol("f", "foil thickness", TradeUnit.Micrometer)]);

    internal static Formula HalfWidth { get; } = new(
        "remaining.half-width", new Symbol("e", "Half the confidence interval of the mean", TradeUnit.Micrometer), "t * s / sqrt(n)", @"t\,\frac{s}{\sqrt{n}}", Student,
        [Quantile, new Symbol("s", "standard deviation", TradeUnit.Micrometer), new Symbol("n", "readings", TradeUnit.One)]);

    internal static Formula Lost { get; } = new(
        "remaining.lost", Loss, "t_i - t_a", @"t_i - t_a", Basis.FirstPrinciples("what the foil is thinner than it was supplied"),
        [new Symbol("t_i", "thickness supplied", TradeUnit.Micrometer), Now]);

    internal static Formula LostBetween { get; } = new(
        "remaining.lost-between", Loss, "t_p - t_a", @"t_p - t_a", Basis.FirstPrinciples("difference of two means"),
        [new Symbol("t_p", "mean before", TradeUnit.Micrometer), new Symbol("t_a", "mean now", TradeUnit.Micrometer)]);

    internal static Formula RefittedRate { get; } = new(
        "remaining.refitted-rate", new Symbol("r", "First-year rate of the law through the reading", TradeUnit.MicrometerPerYear), "D / g", @"\frac{D}{g(T)}", Refit,
        [new Symbol("D", "thickness lost", TradeUnit.Micrometer), new Symbol("g", "loss under the law by now, over that of the first year", TradeUnit.Year)]);

    internal static Formula AfterAge { get; } = new(
        "remaining.after-age", Remaining, "t_all - T", @"t_\mathrm{all} - T", Refit,
        [new Symbol("t_all", "time until the usable thickness is lost", TradeUnit.Year), Age]);

    internal static Formula WelchError { get; } = new(
        "remaining.welch-error", new Symbol("S", "Standard error of the loss between", TradeUnit.Micrometer), "sqrt(s_1 * s_1 / n_1 + s_2 * s_2 / n_2)",
        @"\sqrt{\frac{s_1^2}{n_1} + \frac{s_2^2}{n_2}}", Student,
        [
            new Symbol("s_1", "standard deviation before", TradeUnit.Micrometer), new Symbol("n_1", "readings before", TradeUnit.One),
            new Symbol("s_2", "standard deviation now", TradeUnit.Micrometer), new Symbol("n_2", "readings now", TradeUnit.One),
        ]);

    internal static Formula WelchFreedom { get; } = new(
        "remaining.welch-freedom", new Symbol("v", "Degrees of freedom", TradeUnit.One),
        "pow(S, 4) / (pow(s_1, 4) / (n_1 * n_1 * (n_1 - 1)) + pow(s_2, 4) / (n_2 * n_2 * (n_2 - 1)))",
        @"\frac{S^4}{\frac{s_1^4}{n_1^2(n_1-1)} + \frac{s_2^4}{n_2^2(n_2-1)}}", Student,
        [
            new Symbol("S", "standard error", TradeUnit.Micrometer),
            new Symbol("s_1", "standard deviation before", TradeUnit.Micrometer), new Symbol("n_1", "readings before", TradeUnit.One),
            new Symbol("s_2", "standard deviation now", TradeUnit.Micrometer), new Symbol("n_2", "readings now", TradeUnit.One),
        ]);

    internal static Formula LossBound { get; } = new(
        "remaining.loss-bound", new Symbol("D_max", "Most loss between", TradeUnit.Micrometer), "D + t * S", @"D + t\,S", Student,
        [new Symbol("D", "loss between", TradeUnit.Micrometer), Quantile, new Symbol("S", "standard error", TradeUnit.Micrometer)]);

    internal static Formula NextInspection { get; } = new(
        "remaining.next-inspection", new Symbol("I", "Time to the next inspection", TradeUnit.Year), "min(h * RL, M)", @"\min(h\,RL, M)", RatesOfCodes,
        [
            new Symbol("h", "share of the remaining life", TradeUnit.One), new Symbol("RL", "remaining life", TradeUnit.Year),
            new Symbol("M", "longest interval of the class", TradeUnit.Year),
        ]);

    internal static Formula PredictionRatio { get; } = new(
        "remaining.prediction-ratio", new Symbol("q", "Measured over predicted", TradeUnit.One), "r / r_p", @"\frac{r}{r_p}",
        Basis.FirstPrinciples("first-year rates under one law"),
        [new Symbol("r", "first-year rate of the law through the readings", TradeUnit.MicrometerPerYear), new Symbol("r_p", "highest rate predicted", TradeUnit.MicrometerPerYear)]);
}
