using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>How far a surface is above the dew point of the air at it.</summary>
/// <remarks>Surface: -60 to 400 degC. Read both at the surface to be taped: in the shade of a vessel it is colder than the air tells.</remarks>
public sealed record DewPointMargin : IHasWorkings
{
    private readonly StoredNumber surface;

    /// <summary>Describes surface and air.</summary>
    /// <param name="air">The air at the surface.</param>
    /// <param name="surface">Temperature of the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public DewPointMargin(MoistAir air, Temperature surface)
    {
        ArgumentNullException.ThrowIfNull(air);
        this.Air = air;
        this.surface = new StoredNumber(SurfaceReading.Temperatures.Check(UnitConversions.DegreesCelsius(surface), nameof(surface)));
    }

    /// <summary>The air at the surface.</summary>
    public MoistAir Air { get; }

    /// <summary>Temperature of the surface.</summary>
    public Temperature Surface => Temperature.FromDegreesCelsius(this.surface.Bare);

    /// <summary>Surface less dew point; negative where dew forms.</summary>
    public TemperatureDelta Margin => TemperatureDelta.FromKelvins(this.MarginK(default(NoSteps)));

    /// <summary>The lowest surface temperature at which these rules let work go on in this air.</summary>
    /// <param name="rules">The rule set.</param>
    public Temperature LowestSurface(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return Temperature.FromDegreesCelsius(DewPointKernel.LeastSurfaceC(
            this.Air.DewPointCelsius, rules.Number(RuleIds.MinimumDewPointMargin, TradeUnit.Kelvin), default(NoSteps)));
    }

    /// <summary>Holds the margin against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return rules[RuleIds.MinimumDewPointMargin].Judge(new Measure(this.MarginK(default(NoSteps)), TradeUnit.Kelvin), subject) is { } finding ? [finding] : [];
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = DewPointKernel.DewPointC(this.Air.Celsius, this.Air.Percent, this.Air.Constants.A, this.Air.Constants.B, steps);
        _ = this.MarginK(steps);
        _ = DewPointKernel.LeastSurfaceC(this.Air.DewPointCelsius, RuleSet.Default.Number(RuleIds.MinimumDewPointMargin, TradeUnit.Kelvin), steps);
        return steps.Under("Margin over the dew point; lowest surface by the default rules");
    }

    /// <summary>Surface, dew point and margin as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"surface {this.surface.Bare:0.##} degC, dew point {this.Air.DewPointCelsius:0.0} degC, margin {this.MarginK(default(NoSteps)):0.0} K");

    private double MarginK<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        DewPointKernel.MarginK(this.surface.Bare, this.Air.DewPointCelsius, steps);
}
