using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>First-year rate of a metal from the air of a site, by the dose-response functions of ISO 9223:2012.</summary>
/// <remarks>
/// <para>Zinc: 0.0129 Pd^0.44 exp(0.046 RH + f) + 0.0175 Sd^0.57 exp(0.008 RH + 0.085 T), f = 0.038 (T - 10) up to
/// 10 degC and -0.071 (T - 10) above; recalled, check before use. Carbon steel: 1.77 Pd^0.52 exp(0.020 RH + f) +
/// 0.102 Sd^0.62 exp(0.033 RH + 0.040 T), f = 0.150 (T - 10) and -0.054 (T - 10).</para>
/// <para>Range: T -17.1 to 28.7 degC, RH 34 to 93 %, Pd 0.7 to 150.4, Sd 0.4 to 760.5 mg/(m2.d) (recalled). Outside it
/// refuses, unless told to accept, and then leaves a finding for each value. The standard warns that a combination can lie
/// outside the data even with each value inside, and names coasts.</para>
/// <para>An estimate is no measurement: -33 % / +50 % by the standard (recalled).</para>
/// </remarks>
public sealed record DoseResponse : IHasWorkings
{
    // Name of the value, lowest and highest of the data, unit in text and in findings: check and finding share them.
    private static readonly FitBound[] Fit = Bounds(DoseRangeTerms.Fit);

    private readonly StoredNumber sulfurTerm;
    private readonly StoredNumber chlorideTerm;
    private readonly StoredNumber rate;

    /// <summary>Works out the first-year rate.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="atmosphere">The air of the site.</param>
    /// <param name="beyond">What to do outside the data behind the function.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the data and that is to be refused, or there is no such metal.</exception>
    public DoseResponse(Metal metal, AnnualAtmosphere atmosphere, BeyondFit beyond = BeyondFit.Refuse)
    {
        ArgumentNullException.ThrowIfNull(atmosphere);
        if (!Enum.IsDefined(metal))
        {
            throw new ArgumentOutOfRangeException(nameof(metal), metal, "Not a metal known here.");
        }

        this.Metal = metal;
        this.Atmosphere = atmosphere;
        this.Beyond = beyond;
        if (!Enum.IsDefined(beyond))
        {
            throw new ArgumentOutOfRangeException(nameof(beyond), beyond, "Refuse or AcceptWithFinding.");
        }

        if (beyond == BeyondFit.Refuse)
        {
            double[] values = this.Values();
            for (int i = 0; i < Fit.Length; i++)
            {
                Fit[i].Check(values[i], nameof(atmosphere));
            }
        }

        DoseTerms terms = this.Terms(default(NoSteps));
        this.sulfurTerm = new StoredNumber(terms.SulfurDioxide);
        this.chlorideTerm = new StoredNumber(terms.Chloride);
        this.rate = new StoredNumber(terms.Rate);
    }

    /// <summary>s of an estimate by these functions: ln 1.5, which is -33 % / +50 % (recalled, check before use).</summary>
    public static LogSpread EstimateSpread { get; } = LogSpread.FromValue(Math.Log(1.5));

    /// <summary>The metal.</summary>
    public Metal Metal { get; }

    /// <summary>The air of the site.</summary>
    public AnnualAtmosphere Atmosphere { get; }

    /// <summary>What was chosen for values outside the data behind the function.</summary>
    public BeyondFit Beyond { get; }

    /// <summary>The part of the rate that goes with sulfur dioxide.</summary>
    public CorrosionRate BySulfurDioxide => CorrosionRate.FromMicrometersPerYear(this.sulfurTerm.Bare);

    /// <summary>The part of the rate that goes with chloride.</summary>
    public CorrosionRate ByChloride => CorrosionRate.FromMicrometersPerYear(this.chlorideTerm.Bare);

    /// <summary>The first-year rate: the middle of the estimate.</summary>
    public CorrosionRate Rate => CorrosionRate.FromMicrometersPerYear(this.rate.Bare);

    /// <summary>The first-year rate with its log-normal error.</summary>
    public LogNormalRate LogNormal => new(this.Rate, EstimateSpread);

    /// <summary>The category of the middle of the estimate; null above CX.</summary>
    public CorrosivityCategory? Category => Corrosivity.CategoryOf(this.Rate, this.Metal);

    /// <summary>On what the function rests.</summary>
    public Basis Basis => (this.Metal == Metal.Zinc ? ExposureFormulas.ZincRate : ExposureFormulas.SteelRate).Basis;

    /// <summary>The values outside the data behind the function, each with the bound it passes.</summary>
    internal IEnumerable<RateConcern> Outside()
    {
        double[] values = this.Values();
        for (int i = 0; i < Fit.Length; i++)
        {
            if (Fit[i].Passed(values[i]) is { } bound)
            {
                yield return new RateConcern(Rules.RuleIds.RateBeyondFit, new Measure(values[i], Fit[i].Unit), new Measure(bound, Fit[i].Unit));
            }
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        DoseTerms terms = this.Terms(steps);
        _ = ExposureKernel.Interval(terms.Rate, EstimateSpread.Value, steps);
        return steps.Under($"First-year rate of {(this.Metal == Metal.Zinc ? "zinc" : "carbon steel")}, {this.Atmosphere}");
    }

    /// <summary>The rate and its interval in a few words.</summary>
    public override string ToString() => $"{this.Rate} ({this.LogNormal.Range})";

    private static FitBound[] Bounds(in DoseRangeTerms data) =>
    [
        new("Temperature", data.LeastCelsius, data.MostCelsius, TradeUnit.DegreeCelsius),
        new("Humidity", data.LeastPercent, data.MostPercent, TradeUnit.Percent),
        new("SulfurDioxide", data.LeastSulfur, data.MostSulfur, TradeUnit.MilligramPerSquareMeterDay),
        new("Chloride", data.LeastChloride, data.MostChloride, TradeUnit.MilligramPerSquareMeterDay),
    ];

    private double[] Values() =>
    [
        this.Atmosphere.Celsius, this.Atmosphere.Percent,
        this.Atmosphere.SulfurDioxide.MilligramsPerSquareMeterDay, this.Atmosphere.Chloride.MilligramsPerSquareMeterDay,
    ];

    private DoseTerms Terms<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double sulfur = this.Atmosphere.SulfurDioxide.MilligramsPerSquareMeterDay;
        double chloride = this.Atmosphere.Chloride.MilligramsPerSquareMeterDay;
        return this.Metal == Metal.Zinc
            ? ExposureKernel.Zinc(this.Atmosphere.Celsius, this.Atmosphere.Percent, sulfur, chloride, steps)
            : ExposureKernel.Steel(this.Atmosphere.Celsius, this.Atmosphere.Percent, sulfur, chloride, steps);
    }
}
