namespace SacrificialTape.Sweeps.Sampling;

/// <summary>
/// A Latin hypercube: each input is cut into as many equal shares as there are rows, and each share is taken once, at a random
/// place in it (McKay, Beckman and Conover, Technometrics 21 (1979) 239-245; recalled).
/// </summary>
/// <remarks>Inputs that go together keep this for the first of them only. The number of rows belongs to the design: another
/// number gives other rows.</remarks>
public sealed class LatinHypercubeDesign : ShareDesign
{
    /// <summary>Chooses the rows.</summary>
    /// <param name="seed">What all random choices start from.</param>
    /// <param name="rows">How many, at least 1 and at most 4 294 967 295.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of rows is outside its range.</exception>
    public LatinHypercubeDesign(ulong seed, long rows)
        : base(seed) => this.Points = AtLeastOne(rows, nameof(rows));

    internal override long Points { get; }

    /// <summary>The design in a few words.</summary>
    public override string ToString() => $"Latin hypercube of {this.Points} rows, seed {this.Seed}";

    internal override void Shares(int column, long firstRow, Span<double> shares)
    {
        for (int i = 0; i < shares.Length; i++)
        {
            long row = firstRow + i;
            ulong word = PhiloxKernel.Words(this.Seed, PhiloxKernel.Purpose.Share, (uint)column, (ulong)row).First;
            double within = PhiloxKernel.Share(word);
            double share = (PermutationKernel.At(this.Seed, (uint)column, this.Points, row) + within) / this.Points;

            // Rounding may carry the last share to 1, where no value lies.
            shares[i] = Math.Min(share, 1 - (1.0 / (1UL << 53)));
        }
    }
}
