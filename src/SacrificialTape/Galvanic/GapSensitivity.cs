using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>By how many per cent the widest protected gap grows for one per cent more film or conductivity.</summary>
/// <remarks>
/// 0.5 for both on wide zinc, since only sigma d counts and lengths go with its root. Where oxygen comes through the film,
/// a thicker film also slows it: the figure for thickness then goes towards 1.
/// </remarks>
public sealed record GapSensitivity : IHasWorkings
{
    private readonly StoredNumber thinner;
    private readonly StoredNumber thicker;
    private readonly StoredNumber poorer;
    private readonly StoredNumber richer;
    private readonly StoredNumber step;

    internal GapSensitivity(ProtectedGap gap, double thinnerMm, double thickerMm, double poorerMm, double richerMm, double step)
    {
        this.Gap = gap;
        this.thinner = new StoredNumber(thinnerMm);
        this.thicker = new StoredNumber(thickerMm);
        this.poorer = new StoredNumber(poorerMm);
        this.richer = new StoredNumber(richerMm);
        this.step = new StoredNumber(step);
    }

    /// <summary>The gap.</summary>
    public ProtectedGap Gap { get; }

    /// <summary>Per cent of gap for one per cent of film thickness.</summary>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.ThicknessElasticity))]
    public double ToThickness => this.Thickness(default(NoSteps));

    /// <summary>Per cent of gap for one per cent of conductivity.</summary>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.ConductivityElasticity))]
    public double ToConductivity => this.Conductivity(default(NoSteps));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Thickness(steps);
        _ = this.Conductivity(steps);
        return steps.Under("How the widest gap follows the film");
    }

    private double Thickness<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => ReachKernel.Elasticity(
            ReachFormulas.ThicknessElasticity,
            this.Gap.Film.Um * (1 - this.step.Bare),
            this.Gap.Film.Um * (1 + this.step.Bare),
            this.thinner.Bare,
            this.thicker.Bare,
            steps);

    private double Conductivity<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => ReachKernel.Elasticity(
            ReachFormulas.ConductivityElasticity,
            this.Gap.Film.SiemensPerM * (1 - this.step.Bare),
            this.Gap.Film.SiemensPerM * (1 + this.step.Bare),
            this.poorer.Bare,
            this.richer.Bare,
            steps);

    /// <summary>Both sensitivities in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.ToThickness:0.####} to thickness, {this.ToConductivity:0.####} to conductivity");
}
