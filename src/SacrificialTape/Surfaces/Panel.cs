using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A flat panel, covered on one face less its openings.</summary>
/// <remarks>
/// No opening is larger than the panel, and together they leave some of it. An opening with a place lies within the
/// panel, and no two with places overlap; touching is allowed, to a billionth of the size. Rims are not part of it:
/// they are surfaces of their own, each a <see cref="WindowOpening"/>.
/// </remarks>
public abstract record Panel : Surface
{
    private protected Panel(ValueList<PanelOpening>? openings) => this.Openings = openings ?? ValueList<PanelOpening>.Empty;

    /// <summary>The openings that are left out.</summary>
    public ValueList<PanelOpening> Openings { get; }

    /// <summary>Area with the openings.</summary>
    public Area GrossArea => Area.FromSquareMeters(this.GrossSquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(PanelFormulas), nameof(PanelFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => this.Form + (this.Openings.Count == 0
        ? string.Empty
        : $", {this.Openings.Sum(static opening => opening.Count)} opening(s)");

    internal abstract string Form { get; }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description);
    }

    internal abstract double GrossSquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder;

    /// <summary>Checks the size of an opening that has no place, throwing for one that the panel cannot hold.</summary>
    private protected abstract void CheckSize(PanelOpening opening, string parameter);

    /// <summary>Whether an opening lies within the panel at its place.</summary>
    private protected abstract bool Holds(PanelOpening opening);

    /// <summary>Checks all openings; for the end of a constructor.</summary>
    private protected void CheckOpenings(string parameter)
    {
        foreach (PanelOpening opening in this.Openings)
        {
            this.CheckSize(opening, parameter);
            if (opening.IsPlaced && !this.Holds(opening))
            {
                throw new ArgumentException($"The opening {opening} from the middle does not lie within the {this.Form}.", parameter);
            }
        }

        PanelOpening[] placed = [.. this.Openings.Where(static opening => opening.IsPlaced)];
        for (int i = 0; i < placed.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (PanelFit.Overlap(placed[i], placed[j]))
                {
                    throw new ArgumentException($"The openings {placed[j]} and {placed[i]} overlap.", parameter);
                }
            }
        }

        double gross = this.GrossSquareMeters(default(NoSteps));
        double open = this.OpenSquareMeters(default(NoSteps));
        if (WithAllowance.AtLeast(open, gross))
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"The openings come to {open:0.######} m2, the {this.Form} to {gross:0.######} m2: nothing is left to cover."),
                parameter);
        }
    }

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        PanelKernel.NetSquareMeters(this.GrossSquareMeters(steps), this.OpenSquareMeters(steps), steps);

    private double OpenSquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double open = 0;
        foreach (PanelOpening opening in this.Openings)
        {
            open += opening.IsRound
                ? PanelKernel.RoundSquareMeters(opening.WidthMm, opening.Count, steps)
                : PanelKernel.RectangularSquareMeters(opening.WidthMm, opening.HeightMm, opening.Count, steps);
        }

        return open;
    }
}
