using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>The cylindrical shell of a tank or vessel, upright or lying, covered on its outside less its openings.</summary>
/// <remarks>
/// Outside diameter: 10 mm to 100 m. Length or height: 1 mm to 1000 m. Each opening fits the shell, and together they
/// leave some of it. That openings do not overlap one another is for whoever lists them to see to.
/// </remarks>
public sealed record Shell : Surface
{
    private readonly StoredNumber diameterMm;
    private readonly StoredNumber lengthMm;

    /// <summary>Describes a shell.</summary>
    /// <param name="outsideDiameter">Outside diameter of the plates.</param>
    /// <param name="length">Along the axis: the height of an upright shell.</param>
    /// <param name="axis">Whether it stands or lies.</param>
    /// <param name="openings">Openings to be left out; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or an opening does not fit.</exception>
    /// <exception cref="ArgumentException">The openings leave nothing of the shell.</exception>
    public Shell(Length outsideDiameter, Length length, ShellAxis axis, IEnumerable<ShellOpening>? openings = null)
    {
        ValueList<ShellOpening>? allOpenings = openings?.Listed();
        double diameter = FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter));
        double height = FittingRanges.ExtentMm(length, nameof(length));
        this.diameterMm = new StoredNumber(diameter);
        this.lengthMm = new StoredNumber(height);
        this.Axis = Enum.IsDefined(axis) ? axis : throw new ArgumentOutOfRangeException(nameof(axis), axis, "Not an axis known here.");
        this.Openings = allOpenings ?? ValueList<ShellOpening>.Empty;
        foreach (ShellOpening opening in this.Openings)
        {
            _ = FittingRanges.Within(opening.AlongMm, 1, height, nameof(openings));
            _ = FittingRanges.Within(opening.AroundMm, 1, opening.IsRound ? diameter : Math.PI * diameter, nameof(openings));
        }

        if (!(this.SquareMeters(default(NoSteps)) > 0))
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"The openings are as large as the shell of {this.GrossArea.SquareMeters:0.###} m2: nothing is left to cover."),
                nameof(openings));
        }
    }

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.diameterMm.Bare);

    /// <summary>Length along the axis: the height of an upright shell.</summary>
    public Length Length => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Whether it stands or lies.</summary>
    public ShellAxis Axis { get; }

    /// <summary>The openings that are left out.</summary>
    public ValueList<ShellOpening> Openings { get; }

    /// <summary>Circumference: what a tape measure round the shell reads.</summary>
    [BasisOf(typeof(PipeFormulas), nameof(PipeFormulas.Circumference))]
    public Length Circumference => Length.FromMillimeters(PipeKernel.CircumferenceMm(this.diameterMm.Bare, default(NoSteps)));

    /// <summary>Area with the openings.</summary>
    [BasisOf(typeof(ShellFormulas), nameof(ShellFormulas.GrossArea))]
    public Area GrossArea => Area.FromSquareMeters(
        ShellKernel.GrossSquareMeters(this.diameterMm.Bare, this.lengthMm.Bare, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(ShellFormulas), nameof(ShellFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{(this.Axis == ShellAxis.Upright ? "upright" : "lying")} shell {this.diameterMm.Bare:0.##} mm, {this.lengthMm.Bare / 1000:0.###} m {(this.Axis == ShellAxis.Upright ? "high" : "long")}, {this.Openings.Sum(static opening => opening.Count)} opening(s)");

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description);
    }

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double gross = ShellKernel.GrossSquareMeters(this.diameterMm.Bare, this.lengthMm.Bare, steps);
        double open = 0;
        foreach (ShellOpening opening in this.Openings)
        {
            open += opening.SquareMeters(this.diameterMm.Bare, steps);
        }

        return ShellKernel.NetSquareMeters(gross, open, steps);
    }
}
