namespace SacrificialTape.Galvanic;

/// <summary>
/// Net current density of an electrode at a potential, and its slope: in V and A/m2, positive where metal is lost
/// (anode). Linear, or Tafel with oxygen reduction in series with its supply, or inert.
/// </summary>
internal readonly struct ElectrodeTerms
{
    private readonly Law law;
    private readonly double conductance;
    private readonly double corrosion;
    private readonly double anodic;
    private readonly double cathodic;
    private readonly double limit;
    private readonly double ratio;

    private ElectrodeTerms(Law law, double rest, double conductance, double corrosion, double anodic, double cathodic, double limit)
    {
        this.law = law;
        this.Rest = rest;
        this.conductance = conductance;
        this.corrosion = corrosion;
        this.anodic = anodic;
        this.cathodic = cathodic;
        this.limit = limit;
        this.ratio = (limit - corrosion) / corrosion;
    }

    private enum Law
    {
        Inert,
        Linear,
        Tafel,
    }

    /// <summary>Neither gives nor takes current: paint, bled adhesive.</summary>
    internal static ElectrodeTerms Inert => default;

    /// <summary>The potential at which no net current flows, V.</summary>
    internal double Rest { get; }

    internal bool IsInert => this.law == Law.Inert;

    internal bool IsLinear => this.law == Law.Linear;

    /// <summary>i = (E - E_rest) / R_p.</summary>
    internal static ElectrodeTerms Linear(double rest, double ohmM2) => new(Law.Linear, rest, 1 / ohmM2, 0, 0, 0, 0);

    /// <summary>
    /// i = i_corr 10^(n/b_a) - 1/(1/i_L + 1/i_act), n = E - E_rest, i_act = i* 10^(-n/b_c) with i* such that both sides are
    /// i_corr at rest. An infinite i_L leaves the Tafel law.
    /// </summary>
    internal static ElectrodeTerms Tafel(double rest, double corrosion, double anodicVPerDecade, double cathodicVPerDecade, double limit)
    {
        const double Ln10 = 2.302585092994045684;
        return new(Law.Tafel, rest, 0, corrosion, Ln10 / anodicVPerDecade, Ln10 / cathodicVPerDecade, limit);
    }

    internal double Current(double potential)
    {
        this.Evaluate(potential, out double current, out _);
        return current;
    }

    internal double Slope(double potential)
    {
        this.Evaluate(potential, out _, out double slope);
        return slope;
    }

    internal void Evaluate(double potential, out double current, out double slope)
    {
        double over = potential - this.Rest;
        switch (this.law)
        {
            case Law.Linear:
                current = over * this.conductance;
                slope = this.conductance;
                return;
            case Law.Tafel:
                double dissolved = this.corrosion * Math.Exp(this.anodic * over);
                double grown = Math.Exp(this.cathodic * over);

                // Written with the supply over the demand, so that neither side of a wide range of potentials overflows.
                double reduced = double.IsPositiveInfinity(this.limit) ? this.corrosion / grown : this.limit / (1 + (this.ratio * grown));
                double free = double.IsPositiveInfinity(this.limit) ? 1 : 1 - (reduced / this.limit);
                current = dissolved - reduced;
                slope = (this.anodic * dissolved) + (this.cathodic * reduced * free);
                return;
            default:
                current = 0;
                slope = 0;
                return;
        }
    }
}
