namespace SacrificialTape.Sweeps.Grids;

/// <summary>Where numbers of a grid come from: a place for each combination of some factors, the last of them the fastest.</summary>
/// <param name="Memory">The numbers; null where the rows themselves hold them.</param>
/// <param name="Factors">Which factors, in rising order.</param>
/// <param name="Answer">Which answer of the rows, where the rows hold them.</param>
internal sealed record GridSource(double[]? Memory, int[] Factors, int Answer);
