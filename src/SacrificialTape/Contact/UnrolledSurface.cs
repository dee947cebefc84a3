using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>A surface laid flat: how long it is, how far round, and whether it closes on itself.</summary>
/// <remarks>
/// <para>Along runs from the start of the surface: along a pipe or the axis of a shell, along the outside of a bend, across a
/// panel from the left. Around runs from the line that the crew names, clockwise seen along the surface: the top of a pipe,
/// the outside of a bend; on a panel up from the bottom.</para>
/// <para>Pipe, shell and panel lie flat without strain. A bend does not: what is 1 along its outside is less further in, by
/// the factor (R + r cos(psi))/(R + r). Lengths along a bend are therefore those of the outside, which a crew can measure.</para>
/// </remarks>
public sealed record UnrolledSurface : IHasWorkings
{
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber girthMm;
    private readonly StoredNumber bendRadiusMm;

    /// <summary>Lays a straight pipe flat.</summary>
    /// <param name="pipe">The pipe.</param>
    public UnrolledSurface(StraightPipe pipe)
        : this(
            pipe ?? throw new ArgumentNullException(nameof(pipe)),
            UnitConversions.Millimeters(pipe.Length),
            PipeKernel.CircumferenceMm(UnitConversions.Millimeters(pipe.OutsideDiameter), default(NoSteps)),
            closed: true)
    {
    }

    /// <summary>Lays the shell of a tank or vessel flat. Its openings have no place and stay in: the safe side.</summary>
    /// <param name="shell">The shell.</param>
    public UnrolledSurface(Shell shell)
        : this(
            shell ?? throw new ArgumentNullException(nameof(shell)),
            UnitConversions.Millimeters(shell.Length),
            PipeKernel.CircumferenceMm(UnitConversions.Millimeters(shell.OutsideDiameter), default(NoSteps)),
            closed: true)
    {
    }

    /// <summary>Lays a bend out along its outside.</summary>
    /// <param name="bend">The bend.</param>
    public UnrolledSurface(Bend bend)
        : this(
            bend ?? throw new ArgumentNullException(nameof(bend)),
            UnitConversions.Millimeters(bend.OutsideArc),
            PipeKernel.CircumferenceMm(UnitConversions.Millimeters(bend.OutsideDiameter), default(NoSteps)),
            closed: true) => this.bendRadiusMm = new StoredNumber(UnitConversions.Millimeters(bend.BendRadius));

    /// <summary>Takes a flat rectangular panel as it is. Windows keep out of openings with a place; area of openings stays in: the safe side.</summary>
    /// <param name="panel">The panel.</param>
    public UnrolledSurface(RectangularPanel panel)
        : this(
            panel ?? throw new ArgumentNullException(nameof(panel)),
            UnitConversions.Millimeters(panel.Width),
            UnitConversions.Millimeters(panel.Height),
            closed: false)
    {
    }

    private UnrolledSurface(Surface surface, double lengthMm, double girthMm, bool closed)
    {
        this.Surface = surface;
        this.lengthMm = new StoredNumber(lengthMm);
        this.girthMm = new StoredNumber(girthMm);
        this.IsClosed = closed;
    }

    /// <summary>The surface.</summary>
    public Surface Surface { get; }

    /// <summary>Its length along; of a bend, along the outside.</summary>
    public Length Length => Length.FromMillimeters(this.LengthMm);

    /// <summary>How far it is round; the height of a panel.</summary>
    public Length Girth => Length.FromMillimeters(this.GirthMm);

    /// <summary>Whether it closes on itself around.</summary>
    public bool IsClosed { get; }

    internal double LengthMm => this.lengthMm.Bare;

    internal double GirthMm => this.girthMm.Bare;

    internal bool IsBend => this.bendRadiusMm.IsSet;

    /// <summary>Area in mm2: on a bend, less than length times girth.</summary>
    internal double AreaMm2 => this.LengthMm * this.CoveredFactorMm(0, this.GirthMm, default(NoSteps));

    private double TubeMm => this.GirthMm / (2 * Math.PI);

    /// <summary>The unrolled form of a surface, or false where none is known.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="unrolled">Its unrolled form.</param>
    public static bool TryUnroll(Surface surface, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out UnrolledSurface? unrolled)
    {
        unrolled = surface switch
        {
            StraightPipe pipe => new(pipe),
            Shell shell => new(shell),
            Bend bend => new(bend),
            RectangularPanel panel => new(panel),
            _ => null,
        };
        return unrolled is not null;
    }

    /// <summary>How long on the steel a unit along is at a place around: 1 but on bends.</summary>
    /// <param name="around">The place around, from the named line.</param>
    [BasisOf(typeof(ContactFormulas), nameof(ContactFormulas.BendFactor))]
    public AreaRatio FactorAlong(Length around) => AreaRatio.FromRatio(this.Factor(UnitConversions.Millimeters(around), default(NoSteps)));

    /// <summary>How the area comes about; on a bend, how lengths along it change around.</summary>
    public Workings ShowWorkings()
    {
        if (!this.IsBend)
        {
            return this.Surface.ShowWorkings();
        }

        var steps = new StepList();
        _ = this.Factor(this.GirthMm / 2, steps);
        _ = this.CoveredFactorMm(0, this.GirthMm, steps);
        return steps.Under("Unrolled " + this.Surface.Description);
    }

    /// <summary>Length, girth and kind in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Surface.Description}, unrolled {this.LengthMm:0.#} x {this.GirthMm:0.#} mm{(this.IsClosed ? ", closed around" : string.Empty)}{(this.IsBend ? ", lengths along the outside" : string.Empty)}");

    internal double Factor<TSteps>(double aroundMm, TSteps steps)
        where TSteps : struct, IStepRecorder => this.IsBend
            ? UnrolledKernel.BendFactor(this.bendRadiusMm.Bare, this.TubeMm, aroundMm / this.GirthMm * 360, steps)
            : 1;

    /// <summary>The least factor between two places around.</summary>
    internal double LeastFactor(double fromMm, double toMm) => this.IsBend
        ? Math.Min(this.Holds(this.GirthMm / 2, fromMm, toMm) ? this.Factor(this.GirthMm / 2, default(NoSteps)) : 1, this.AtEnds(fromMm, toMm, Math.Min))
        : 1;

    /// <summary>The largest factor between two places around.</summary>
    internal double LargestFactor(double fromMm, double toMm) => this.IsBend
        ? this.Holds(0, fromMm, toMm) ? 1 : this.AtEnds(fromMm, toMm, Math.Max)
        : 1;

    /// <summary>Root of the mean square of the factor on the straight way between two places around: no path of that kind is longer.</summary>
    internal double MeanSquareFactor(double fromMm, double toMm) => this.IsBend
        ? UnrolledKernel.MeanSquareFactor(this.bendRadiusMm.Bare, this.TubeMm, fromMm, toMm)
        : 1;

    /// <summary>The integral of the factor around, in mm: area of what lies between, for each unit along.</summary>
    internal double CoveredFactorMm<TSteps>(double fromMm, double toMm, TSteps steps)
        where TSteps : struct, IStepRecorder => this.IsBend
            ? UnrolledKernel.CoveredMm(this.bendRadiusMm.Bare, this.TubeMm, fromMm, toMm, steps)
            : toMm - fromMm;

    private double AtEnds(double fromMm, double toMm, Func<double, double, double> choose) =>
        choose(this.Factor(fromMm, default(NoSteps)), this.Factor(toMm, default(NoSteps)));

    private bool Holds(double placeMm, double fromMm, double toMm) =>
        placeMm + (Math.Ceiling((fromMm - placeMm) / this.GirthMm) * this.GirthMm) <= toMm;
}
