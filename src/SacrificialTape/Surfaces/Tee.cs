using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A tee, equal or reducing: a run and a branch square to it, axis to axis, covered on the outside.</summary>
/// <remarks>
/// <para>Diameters: 1 mm to 100 m, the branch at most as wide as the run. The run reaches at least half the branch's
/// diameter from the centre, the branch at least half the run's; both at most 1000 m.</para>
/// <para>Run and branch meet in their true saddle line. The rounded crotch of a pressed fitting, which takes a little off
/// the area, is not counted; nor is a reinforcing pad.</para>
/// </remarks>
public sealed record Tee : Surface
{
    private readonly StoredNumber runMm;
    private readonly StoredNumber branchMm;
    private readonly StoredNumber runCentreToEndMm;
    private readonly StoredNumber branchCentreToEndMm;

    /// <summary>Describes a tee by what was measured.</summary>
    /// <param name="runDiameter">Outside diameter of the run.</param>
    /// <param name="branchDiameter">Outside diameter of the branch, at most that of the run.</param>
    /// <param name="runCentreToEnd">C, from the branch's axis to the end of the run: half its length.</param>
    /// <param name="branchCentreToEnd">M, from the run's axis to the end of the branch.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Tee(Length runDiameter, Length branchDiameter, Length runCentreToEnd, Length branchCentreToEnd)
    {
        double run = FittingRanges.DiameterMm(runDiameter, nameof(runDiameter));
        double branch = FittingRanges.DiameterMm(branchDiameter, nameof(branchDiameter));
        this.runMm = new StoredNumber(run);
        this.branchMm = new StoredNumber(FittingRanges.Within(branch, 1, run, nameof(branchDiameter)));
        this.runCentreToEndMm = new StoredNumber(
            FittingRanges.Within(UnitConversions.Millimeters(runCentreToEnd), branch / 2, 1e6, nameof(runCentreToEnd)));
        this.branchCentreToEndMm = new StoredNumber(
            FittingRanges.Within(UnitConversions.Millimeters(branchCentreToEnd), run / 2, 1e6, nameof(branchCentreToEnd)));
    }

    /// <summary>Describes a butt-weld tee by its sizes, with the dimensions of ASME B16.9.</summary>
    /// <param name="run">Size of the run.</param>
    /// <param name="branch">Size of the branch; the same as the run for an equal tee.</param>
    /// <exception cref="ArgumentException">The pair of sizes is not known here.</exception>
    public Tee(PipeSize run, PipeSize branch)
        : this(
            (run ?? throw new ArgumentNullException(nameof(run))).OutsideDiameter,
            (branch ?? throw new ArgumentNullException(nameof(branch))).OutsideDiameter,
            FittingSizes.TeeRunCentreToEnd(run),
            FittingSizes.TeeBranchCentreToEnd(run, branch)) =>
        this.LengthBasis = run == branch ? FittingSizes.EqualTeeBasis : FittingSizes.ReducingTeeBasis;

    /// <summary>Outside diameter of the run.</summary>
    public Length RunDiameter => Length.FromMillimeters(this.RunMm);

    /// <summary>Outside diameter of the branch.</summary>
    public Length BranchDiameter => Length.FromMillimeters(this.BranchMm);

    /// <summary>C, from the branch's axis to the end of the run.</summary>
    public Length RunCentreToEnd => Length.FromMillimeters(this.runCentreToEndMm.Bare);

    /// <summary>M, from the run's axis to the end of the branch.</summary>
    public Length BranchCentreToEnd => Length.FromMillimeters(this.branchCentreToEndMm.Bare);

    /// <summary>On what C and M rest when they were taken from a table; null when they were given.</summary>
    public Basis? LengthBasis { get; }

    /// <summary>The branch over the ridge of the run, from saddle to end: its shortest side, which a rule reads.</summary>
    [BasisOf(typeof(TeeFormulas), nameof(TeeFormulas.ShortSide))]
    public Length BranchShortSide => Length.FromMillimeters(
        TeeKernel.ShortSideMm(this.RunMm, this.branchCentreToEndMm.Bare));

    /// <summary>The branch down the flank of the run, from saddle to end: its longest side.</summary>
    [BasisOf(typeof(TeeFormulas), nameof(TeeFormulas.LongSide))]
    public Length BranchLongSide => Length.FromMillimeters(
        TeeKernel.LongSideMm(this.RunMm, this.BranchMm, this.branchCentreToEndMm.Bare));

    /// <inheritdoc/>
    [BasisOf(typeof(TeeFormulas), nameof(TeeFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"tee {this.RunMm:0.##} x {this.BranchMm:0.##} mm, C {this.runCentreToEndMm.Bare:0.##} mm, M {this.branchCentreToEndMm.Bare:0.##} mm");

    internal double RunMm => this.runMm.Bare;

    internal double BranchMm => this.branchMm.Bare;

    internal double RunCentreToEndMm => this.runCentreToEndMm.Bare;

    internal double BranchCentreToEndMm => this.branchCentreToEndMm.Bare;

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description + (this.LengthBasis is { } basis ? $" [C and M: {basis}]" : string.Empty));
    }

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        TeeKernel.SquareMeters(this.RunMm, this.BranchMm, this.runCentreToEndMm.Bare, this.branchCentreToEndMm.Bare, steps);
}
