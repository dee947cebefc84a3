using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Dimensions of a flange by ASME B16.5, for those sizes of class 150 that are known here.</summary>
/// <remarks>
/// Read in two published tables of the standard that agree within 1 mm. Thickness includes the raised face; newer
/// editions list the least thickness without it. Its height of 1.6 mm is recalled, check before use.
/// </remarks>
public sealed record FlangeSize : IHasWorkings
{
    private readonly FlangeTable.Row row;

    private FlangeSize(FlangeTable.Row row) => this.row = row;

    /// <summary>Nominal pipe size.</summary>
    public string Nps => this.row.Nps;

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.row.OutsideMm);

    /// <summary>Least thickness, raised face included.</summary>
    public Length Thickness => Length.FromMillimeters(this.row.ThicknessMm);

    /// <summary>Thickness at the rim: without the raised face, whose height is recalled, check before use.</summary>
    [BasisOf(typeof(FlangeFormulas), nameof(FlangeFormulas.RimThickness))]
    public Length RimThickness => Length.FromMillimeters(this.RimMm(default(NoSteps)));

    /// <summary>Diameter of the circle of bolts.</summary>
    public Length BoltCircle => Length.FromMillimeters(this.row.BoltCircleMm);

    /// <summary>Number of bolt holes.</summary>
    public int BoltHoles => this.row.Holes;

    /// <summary>Diameter of a bolt hole.</summary>
    public Length BoltHoleDiameter => Length.FromMillimeters(this.row.HoleMm);

    /// <summary>Diameter of the raised face.</summary>
    public Length RaisedFaceDiameter => Length.FromMillimeters(this.row.FaceMm);

    /// <summary>On what the dimensions rest.</summary>
    public Basis Basis { get; } = FittingSources.Flanges;

    /// <summary>On what the height of the raised face rests.</summary>
    public Basis RaisedFaceBasis { get; } = FittingSources.RaisedFace;

    /// <summary>The flange of class 150 for a size of pipe.</summary>
    /// <param name="pipe">The size, under ASME B36.10M.</param>
    /// <exception cref="ArgumentException">The size is not known here.</exception>
    public static FlangeSize Class150(PipeSize pipe)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        if (pipe.Standard != PipeStandard.AsmeB3610M)
        {
            throw new ArgumentException($"Flanges of ASME B16.5 fit pipe of ASME B36.10M, not {pipe}.", nameof(pipe));
        }

        foreach (FlangeTable.Row row in FlangeTable.Rows)
        {
            if (row.Nps == pipe.Nps)
            {
                return new FlangeSize(row);
            }
        }

        string known = string.Join(", ", FlangeTable.Rows.ToArray().Select(static row => row.Nps));
        throw new ArgumentException(
            $"The flange of class 150 of NPS {pipe.Nps} is not known here; known are NPS {known}. Measure the flange.", nameof(pipe));
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.RimMm(steps);
        return steps.Under($"Rim of a flange NPS {this.Nps}, class 150");
    }

    /// <summary>Standard, class and size.</summary>
    public override string ToString() => $"ASME B16.5 class 150, NPS {this.Nps}";

    internal double RimMm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        FlangeKernel.RimThicknessMm(this.row.ThicknessMm, FlangeTable.RaisedFaceMm, steps);
}
