using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>The formulas of reach under a thin film as the workings show them.</summary>
internal static class ReachFormulas
{
    private static readonly Basis Film = Basis.FirstPrinciples("charge balance along a film much thinner than it is wide, linear metals");
    private static readonly Basis Tafel = Basis.From(References.MixedPotential, "Tafel's law; oxygen supply and reduction in series");
    private static readonly Basis Ratio = Basis.FirstPrinciples("bare steel over the zinc that feeds it, at the spot that gives most");

    private static readonly Symbol Sigma = new("sigma", "conductivity of the film", TradeUnit.SiemensPerMeter);
    private static readonly Symbol D = new("d", "film", TradeUnit.Micrometer);
    private static readonly Symbol SteelR = new("R_s", "polarisation resistance of the steel", TradeUnit.OhmSquareMeter);
    private static readonly Symbol ZincR = new("R_z", "polarisation resistance of the zinc", TradeUnit.OhmSquareMeter);
    private static readonly Symbol SteelLambda = new("lambda_s", "decay length on the steel", TradeUnit.Millimeter);
    private static readonly Symbol ZincLambda = new("lambda_z", "decay length on the zinc", TradeUnit.Millimeter);
    private static readonly Symbol SteelWidth = new("c", "width of the steel to its far end", TradeUnit.Millimeter);
    private static readonly Symbol ZincWidth = new("a", "width of the zinc to its far end", TradeUnit.Millimeter);
    private static readonly Symbol SteelG = new("G_s", "conductance of the steel", TradeUnit.SiemensPerMeter);
    private static readonly Symbol ZincG = new("G_z", "conductance of the zinc", TradeUnit.SiemensPerMeter);
    private static readonly Symbol EdgeR = new("R_e", "resistance at the edge", TradeUnit.OhmMeter);
    private static readonly Symbol SteelE = new("E_s", "rest potential of the steel, SCE", TradeUnit.Volt);
    private static readonly Symbol ZincE = new("E_z", "rest potential of the zinc, SCE", TradeUnit.Volt);
    private static readonly Symbol Current = new("I_e", "current over the edge", TradeUnit.MilliamperePerMeter);
    private static readonly Symbol EdgeE = new("E_j", "potential at the edge of the steel, SCE", TradeUnit.Volt);
    private static readonly Symbol Wanted = new("E_p", "potential wanted, SCE", TradeUnit.Volt);
    private static readonly Symbol Radius = new("r_h", "radius of the holiday", TradeUnit.Millimeter);
    private static readonly Symbol Over = new("n", "potential above rest", TradeUnit.Volt);

    internal static Formula SteelDecay { get; } = new(
        "reach.steel-decay",
        new Symbol("lambda_s", "Decay length on the steel", TradeUnit.Millimeter),
        "sqrt(sigma * d * R_s)",
        @"\sqrt{\sigma\,d\,R_s}",
        Film,
        [Sigma, D, SteelR]);

    internal static Formula ZincDecay { get; } = new(
        "reach.zinc-decay",
        new Symbol("lambda_z", "Decay length on the zinc", TradeUnit.Millimeter),
        "sqrt(sigma * d * R_z)",
        @"\sqrt{\sigma\,d\,R_z}",
        Film,
        [Sigma, D, ZincR]);

    internal static Formula SteelConductance { get; } = new(
        "reach.steel-conductance",
        new Symbol("G_s", "Conductance of the steel, each metre of edge", TradeUnit.SiemensPerMeter),
        "sigma * d / (1000 * lambda_s) * (1 - exp(-2 * c / lambda_s)) / (1 + exp(-2 * c / lambda_s))",
        @"\frac{\sigma\,d}{1000\,\lambda_s}\tanh\frac{c}{\lambda_s}",
        Film,
        [Sigma, D, SteelLambda, SteelWidth]);

    internal static Formula ZincConductance { get; } = new(
        "reach.zinc-conductance",
        new Symbol("G_z", "Conductance of the zinc, each metre of edge", TradeUnit.SiemensPerMeter),
        "sigma * d / (1000 * lambda_z) * (1 - exp(-2 * a / lambda_z)) / (1 + exp(-2 * a / lambda_z))",
        @"\frac{\sigma\,d}{1000\,\lambda_z}\tanh\frac{a}{\lambda_z}",
        Film,
        [Sigma, D, ZincLambda, ZincWidth]);

    internal static Formula EdgeResistance { get; } = new(
        "reach.edge-resistance",
        new Symbol("R_e", "Resistance at the edge: inert gap and contact", TradeUnit.OhmMeter),
        "1000 * g / (sigma * d) + R_c",
        @"\frac{1000\,g}{\sigma\,d} + R_c",
        Film,
        [new Symbol("g", "inert gap", TradeUnit.Millimeter), Sigma, D, new Symbol("R_c", "contact resistance, each metre of edge", TradeUnit.OhmMeter)]);

    internal static Formula CoupleCurrent { get; } = new(
        "reach.couple-current",
        new Symbol("I_e", "Current over the edge", TradeUnit.MilliamperePerMeter),
        "1000 * (E_s - E_z) / (1 / G_s + 1 / G_z + R_e)",
        @"\frac{1000\,(E_s - E_z)}{1/G_s + 1/G_z + R_e}",
        Film,
        [SteelE, ZincE, SteelG, ZincG, EdgeR]);

    internal static Formula SteelEdge { get; } = new(
        "reach.steel-edge",
        new Symbol("E_j", "Potential at the edge of the steel, SCE", TradeUnit.Volt),
        "E_s - I_e / (1000 * G_s)",
        @"E_s - \frac{I_e}{1000\,G_s}",
        Film,
        [SteelE, Current, SteelG]);

    internal static Formula ZincEdge { get; } = new(
        "reach.zinc-edge",
        new Symbol("E_jz", "Potential at the edge of the zinc, SCE", TradeUnit.Volt),
        "E_z + I_e / (1000 * G_z)",
        @"E_z + \frac{I_e}{1000\,G_z}",
        Film,
        [ZincE, Current, ZincG]);

    internal static Formula FarEnd { get; } = new(
        "reach.far-end",
        new Symbol("E_far", "Potential at the far end of the steel, SCE", TradeUnit.Volt),
        "E_s + 2 * (E_j - E_s) / (exp(c / lambda_s) + exp(-c / lambda_s))",
        @"E_s + \frac{E_j - E_s}{\cosh(c/\lambda_s)}",
        Film,
        [SteelE, EdgeE, SteelWidth, SteelLambda]);

    internal static Formula PeakOverMean { get; } = new(
        "reach.peak-over-mean",
        new Symbol("k_p", "Current density at the edge of the zinc over its mean", TradeUnit.One),
        "a / lambda_z * (1 + exp(-2 * a / lambda_z)) / (1 - exp(-2 * a / lambda_z))",
        @"\frac{a}{\lambda_z}\coth\frac{a}{\lambda_z}",
        Film,
        [ZincWidth, ZincLambda]);

    internal static Formula PeakZinc { get; } = new(
        "reach.peak-zinc",
        new Symbol("i_peak", "Current density at the edge of the zinc", TradeUnit.AmperePerSquareMeter),
        "I_e / a * k_p",
        @"\frac{I_e}{a}\,k_p",
        Film,
        [Current, ZincWidth, new Symbol("k_p", "edge over mean", TradeUnit.One)]);

    internal static Formula HalfSpaceReach { get; } = new(
        "reach.half-space",
        new Symbol("x_p", "Reach on endless steel", TradeUnit.Millimeter),
        "lambda_s * ln((E_j - E_s) / (E_p - E_s))",
        @"\lambda_s \ln\frac{E_j - E_s}{E_p - E_s}",
        Film,
        [SteelLambda, EdgeE, SteelE, Wanted]);

    internal static Formula HalfGapReach { get; } = new(
        "reach.half-gap",
        new Symbol("c_p", "Reach to the middle of a gap with tape on both sides", TradeUnit.Millimeter),
        "lambda_s * ln((E_j - E_s) / (E_p - E_s) + sqrt(pow((E_j - E_s) / (E_p - E_s), 2) - 1))",
        @"\lambda_s \,\mathrm{arcosh}\frac{E_j - E_s}{E_p - E_s}",
        Film,
        [SteelLambda, EdgeE, SteelE, Wanted]);

    internal static Formula OxygenReach { get; } = new(
        "reach.oxygen",
        new Symbol("L", "Reach while oxygen limits the current", TradeUnit.Millimeter),
        "sqrt(2 * sigma * d * U / i_L)",
        @"\sqrt{\frac{2\,\sigma\,d\,U}{i_L}}",
        Basis.FirstPrinciples("charge balance along a thin film, the same cathodic current everywhere"),
        [Sigma, D, new Symbol("U", "potential that may be lost on the way", TradeUnit.Volt), new Symbol("i_L", "limiting current density", TradeUnit.AmperePerSquareMeter)]);

    internal static Formula LinearCurrent { get; } = new(
        "reach.linear-current",
        new Symbol("i", "Current density", TradeUnit.AmperePerSquareMeter),
        "n / R_s",
        @"\frac{n}{R}",
        Basis.FirstPrinciples("the tangent at rest"),
        [Over, SteelR]);

    internal static Formula TafelCurrent { get; } = new(
        "reach.tafel-current",
        new Symbol("i", "Current density", TradeUnit.AmperePerSquareMeter),
        "i_corr * pow(10, n / b_a) - i_L / (1 + (i_L - i_corr) / i_corr * pow(10, n / b_c))",
        @"i_\text{corr} 10^{n/b_a} - \frac{i_L}{1 + \frac{i_L - i_\text{corr}}{i_\text{corr}} 10^{n/b_c}}",
        Tafel,
        [
            new Symbol("i_corr", "current density of own corrosion", TradeUnit.AmperePerSquareMeter),
            Over,
            new Symbol("b_a", "anodic slope, each tenfold", TradeUnit.Volt),
            new Symbol("i_L", "limiting current density", TradeUnit.AmperePerSquareMeter),
            new Symbol("b_c", "cathodic slope, each tenfold", TradeUnit.Volt),
        ]);

    internal static Formula RestResistance { get; } = new(
        "reach.rest-resistance",
        new Symbol("R_p", "Polarisation resistance at rest", TradeUnit.OhmSquareMeter),
        "1 / (ln(10) * i_corr * (1 / b_a + (1 - i_corr / i_L) / b_c))",
        @"\frac{1}{\ln 10\, i_\text{corr}\left(\frac{1}{b_a} + \frac{1 - i_\text{corr}/i_L}{b_c}\right)}",
        Basis.From(References.SternGeary, "with the oxygen supply in series; the slope of the Tafel formula at rest"),
        [
            new Symbol("i_corr", "current density of own corrosion", TradeUnit.AmperePerSquareMeter),
            new Symbol("b_a", "anodic slope, each tenfold", TradeUnit.Volt),
            new Symbol("i_L", "limiting current density", TradeUnit.AmperePerSquareMeter),
            new Symbol("b_c", "cathodic slope, each tenfold", TradeUnit.Volt),
        ]);

    internal static Formula MeanCurrent { get; } = new(
        "reach.mean-current",
        new Symbol("i_mean", "Current density of a stretch on its mean", TradeUnit.AmperePerSquareMeter),
        "I_seg / w",
        @"\frac{I_\text{seg}}{w}",
        Basis.FirstPrinciples("current over width; the current itself by finite volumes, extrapolated to a step of zero"),
        [new Symbol("I_seg", "current of the stretch", TradeUnit.MilliamperePerMeter), new Symbol("w", "its width", TradeUnit.Millimeter)]);

    internal static Formula Balance { get; } = new(
        "reach.balance",
        new Symbol("I_net", "What zinc gives less what steel takes", TradeUnit.MilliamperePerMeter),
        "I_anodes - I_cathodes",
        @"I_\text{anodes} - I_\text{cathodes}",
        Basis.FirstPrinciples("no current leaves by the ends"),
        [new Symbol("I_anodes", "given by all anodes", TradeUnit.MilliamperePerMeter), new Symbol("I_cathodes", "taken by all cathodes", TradeUnit.MilliamperePerMeter)]);

    internal static Formula FullGap { get; } = new(
        "reach.full-gap",
        new Symbol("w_gap", "Widest protected gap between two tapes", TradeUnit.Millimeter),
        "2 * c",
        @"2\,c",
        Basis.FirstPrinciples("the middle of the gap is where the potential is highest; the half width is the root at which it is the one wanted"),
        [new Symbol("c", "half width at which the middle is at the potential wanted", TradeUnit.Millimeter)]);

    internal static Formula ThicknessElasticity { get; } = Elasticity(
        "reach.thickness-elasticity", "e_d", "Per cent of gap for one per cent of film", "film", TradeUnit.Micrometer);

    internal static Formula ConductivityElasticity { get; } = Elasticity(
        "reach.conductivity-elasticity", "e_sigma", "Per cent of gap for one per cent of conductivity", "conductivity", TradeUnit.SiemensPerMeter);

    internal static Formula MarginFeed { get; } = new(
        "feed.margin",
        new Symbol("q", "Bare steel for each area of zinc at its edge", TradeUnit.One),
        "b / a * k_p",
        @"\frac{b}{a}\,k_p",
        Ratio,
        [new Symbol("b", "width of bare steel", TradeUnit.Millimeter), ZincWidth, new Symbol("k_p", "edge over mean; 1 where zinc is used evenly", TradeUnit.One)]);

    internal static Formula RingFeed { get; } = new(
        "feed.ring",
        new Symbol("q", "Bare steel for each area of zinc round it", TradeUnit.One),
        "r_h * r_h / (w * (2 * r_h + w))",
        @"\frac{r_h^2}{(r_h + w)^2 - r_h^2}",
        Ratio,
        [Radius, new Symbol("w", "width of the ring of zinc that feeds it", TradeUnit.Millimeter)]);

    internal static Formula RoundFeed { get; } = new(
        "feed.round",
        new Symbol("q", "Bare steel for each area of zinc at its edge", TradeUnit.One),
        "r_h / (2 * lambda_z * k)",
        @"\frac{r_h}{2\,\lambda_z\,k}",
        Ratio,
        [Radius, ZincLambda, new Symbol("k", "Bessel functions K1/K0 at r_h/lambda_z", TradeUnit.One)]);

    private static Formula Elasticity(string id, string name, string meaning, string what, TradeUnit unit) => new(
        id,
        new Symbol(name, meaning, TradeUnit.One),
        "ln(w_more / w_less) / ln(p_more / p_less)",
        @"\frac{\ln(w_+/w_-)}{\ln(p_+/p_-)}",
        Basis.FirstPrinciples("difference of the gaps a tenth of a per cent up and down"),
        [
            new Symbol("w_more", "gap with more", TradeUnit.Millimeter),
            new Symbol("w_less", "gap with less", TradeUnit.Millimeter),
            new Symbol("p_more", "more " + what, unit),
            new Symbol("p_less", "less " + what, unit),
        ]);
}
