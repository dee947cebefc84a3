using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Dimensions of butt-weld fittings by ASME B16.9, for those sizes that are known here.</summary>
/// <remarks>
/// Equal tees were read in a published table of the standard. Reducers, reducing tees and caps are recalled, check before
/// use. The standard allows 2 mm on these lengths up to NPS 24: a fitting that stands there is better measured. Sizes are
/// those of ASME B36.10M; a size under another standard is refused.
/// </remarks>
internal static class FittingSizes
{
    /// <summary>On what the length of a reducer rests.</summary>
    public static Basis ReducerBasis => FittingSources.Reducers;

    /// <summary>On what the dimensions of an equal tee rest.</summary>
    public static Basis EqualTeeBasis => FittingSources.EqualTees;

    /// <summary>On what the branch of a reducing tee rests.</summary>
    public static Basis ReducingTeeBasis => FittingSources.ReducingTees;

    /// <summary>On what the length of a cap rests.</summary>
    public static Basis CapBasis => FittingSources.Caps;

    /// <summary>End-to-end length H of a reducer, concentric or eccentric.</summary>
    /// <param name="largeEnd">Size of its large end; the small end does not count.</param>
    /// <exception cref="ArgumentException">The size is not known here.</exception>
    [BasisOf(typeof(FittingSources), nameof(FittingSources.Reducers))]
    public static Length ReducerLength(PipeSize largeEnd) =>
        Length.FromMillimeters(Find(largeEnd, static row => row.ReducerMm, "length of a reducer", nameof(largeEnd)));

    /// <summary>Centre of a tee to the end of its run, C.</summary>
    /// <param name="run">Size of the run.</param>
    /// <exception cref="ArgumentException">The size is not known here.</exception>
    [BasisOf(typeof(FittingSources), nameof(FittingSources.EqualTees))]
    public static Length TeeRunCentreToEnd(PipeSize run) =>
        Length.FromMillimeters(Find(run, static row => row.RunMm, "run of a tee", nameof(run)));

    /// <summary>Centre of a tee to the end of its branch, M.</summary>
    /// <param name="run">Size of the run.</param>
    /// <param name="branch">Size of the branch; the same as the run for an equal tee.</param>
    /// <exception cref="ArgumentException">The pair of sizes is not known here.</exception>
    [BasisOf(typeof(FittingSources), nameof(FittingSources.EqualTees))]
    [BasisOf(typeof(FittingSources), nameof(FittingSources.ReducingTees))]
    public static Length TeeBranchCentreToEnd(PipeSize run, PipeSize branch)
    {
        CheckStandard(run, nameof(run));
        CheckStandard(branch, nameof(branch));
        if (run.Nps == branch.Nps)
        {
            return Length.FromMillimeters(Find(run, static row => row.OutletMm, "branch of an equal tee", nameof(run)));
        }

        foreach (FittingTable.Reduced row in FittingTable.ReducedRows)
        {
            if (row.Run == run.Nps && row.Branch == branch.Nps)
            {
                return Length.FromMillimeters(row.OutletMm);
            }
        }

        string known = string.Join(", ", FittingTable.ReducedRows.ToArray().Select(static row => $"{row.Run} x {row.Branch}"));
        throw new ArgumentException(
            $"The branch of a tee NPS {run.Nps} x {branch.Nps} is not known here; known are {known}, and equal tees. Measure the fitting.",
            nameof(branch));
    }

    /// <summary>Overall length E of a cap.</summary>
    /// <param name="size">Size of the pipe.</param>
    /// <exception cref="ArgumentException">The size is not known here.</exception>
    [BasisOf(typeof(FittingSources), nameof(FittingSources.Caps))]
    public static Length CapLength(PipeSize size) =>
        Length.FromMillimeters(Find(size, static row => row.CapMm, "length of a cap", nameof(size)));

    private static double Find(PipeSize size, Func<FittingTable.Row, double?> column, string what, string parameter)
    {
        CheckStandard(size, parameter);
        foreach (FittingTable.Row row in FittingTable.Rows)
        {
            if (row.Nps == size.Nps && column(row) is { } found)
            {
                return found;
            }
        }

        string known = string.Join(
            ", ", FittingTable.Rows.ToArray().Where(row => column(row) is not null).Select(static row => row.Nps));
        throw new ArgumentException(
            $"The {what} of NPS {size.Nps} is not known here; known are NPS {known}. Measure the fitting.", parameter);
    }

    private static void CheckStandard(PipeSize size, string parameter)
    {
        ArgumentNullException.ThrowIfNull(size, parameter);
        if (size.Standard != PipeStandard.AsmeB3610M)
        {
            throw new ArgumentException($"Fittings of ASME B16.9 fit pipe of ASME B36.10M, not {size}.", parameter);
        }
    }
}
