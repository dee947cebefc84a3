namespace SacrificialTape.Galvanic;

/// <summary>What the solver found, in mm, V and mA/m.</summary>
/// <param name="DistanceMm">Nodes, from the left end.</param>
/// <param name="Potential">Potential at each node, extrapolated to a step of zero.</param>
/// <param name="SegmentCurrents">Net current of each segment, mA/m; positive where metal goes into solution.</param>
/// <param name="PieceSegments">The segment of each piece of <see cref="ThinFilmSolver.Coarsest"/> intervals.</param>
/// <param name="Error">Estimated error as a share of the difference between the rest potentials.</param>
/// <param name="Residual">Sum of squares of what the balances of the finest grid do not close by.</param>
/// <param name="Grids">Grids solved.</param>
/// <param name="FinestIntervals">Intervals of the finest.</param>
internal sealed record ThinFilmAnswer(
    double[] DistanceMm,
    double[] Potential,
    double[] SegmentCurrents,
    int[] PieceSegments,
    double Error,
    double Residual,
    int Grids,
    int FinestIntervals);
