using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Welds of branches: each runs round its branch along the true saddle line on the run.</summary>
/// <remarks>Diameters: 1 mm to 100 m, the branch at most as wide as the run, axes crossing square. Count: at least 1.</remarks>
public sealed record SaddleWelds : WeldSeam
{
    private readonly StoredNumber runMm;
    private readonly StoredNumber branchMm;

    /// <summary>Describes welds of branches.</summary>
    /// <param name="runDiameter">Outside diameter of the run.</param>
    /// <param name="branchDiameter">Outside diameter of the branch, at most that of the run.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SaddleWelds(Length runDiameter, Length branchDiameter, int count)
        : base(count)
    {
        this.runMm = new StoredNumber(FittingRanges.DiameterMm(runDiameter, nameof(runDiameter)));
        double branch = FittingRanges.DiameterMm(branchDiameter, nameof(branchDiameter));
        this.branchMm = new StoredNumber(FittingRanges.Within(branch, 1, this.runMm.Bare, nameof(branchDiameter)));
    }

    /// <summary>Outside diameter of the run.</summary>
    public Length RunDiameter => Length.FromMillimeters(this.runMm.Bare);

    /// <summary>Outside diameter of the branch.</summary>
    public Length BranchDiameter => Length.FromMillimeters(this.branchMm.Bare);

    /// <inheritdoc/>
    [BasisOf(typeof(WeldFormulas), nameof(WeldFormulas.Saddle))]
    public override Length SeamLength => Length.FromMillimeters(this.LengthMm(default(NoSteps)));

    /// <inheritdoc/>
    public override bool Closed => true;

    /// <inheritdoc/>
    public override string Place => "round the branch, along its saddle line";

    /// <summary>The welds of like tees made of a run and a branch welded on; a forged tee has none there.</summary>
    /// <param name="tee">One of the tees.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is less than 1.</exception>
    public static SaddleWelds Of(Tee tee, int count)
    {
        ArgumentNullException.ThrowIfNull(tee);
        return new(tee.RunDiameter, tee.BranchDiameter, count);
    }

    internal override double LengthMm<TSteps>(TSteps steps) => WeldKernel.SaddleMm(this.runMm.Bare, this.branchMm.Bare, steps);
}
