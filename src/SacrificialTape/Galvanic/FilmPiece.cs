namespace SacrificialTape.Galvanic;

/// <summary>
/// A piece of surface under the film with one electrode, gridded finely towards the end where another begins:
/// x = L sinh(s u)/sinh(s), u from 0 to 1 counted from that end. Smooth in u, so that halving the step of u leaves an
/// error in even powers of it.
/// </summary>
internal readonly struct FilmPiece(int segment, ElectrodeTerms electrode, double lengthMm, bool fineOnLeft, double stretch)
{
    internal int Segment { get; } = segment;

    internal ElectrodeTerms Electrode { get; } = electrode;

    internal double LengthMm { get; } = lengthMm;

    /// <summary>The grid whose finest step is a fixed share of a decay length.</summary>
    internal FilmPiece GradedFor(double decayMm)
    {
        const double FirstStretch = 3; // the first interval of the coarsest grid is then 3/16 of a decay length
        double wanted = this.LengthMm / (FirstStretch * decayMm);
        return new(this.Segment, this.Electrode, this.LengthMm, fineOnLeft, wanted > 1.05 ? StretchOf(wanted) : 0);
    }

    /// <summary>Distance from the left end of the piece, mm.</summary>
    internal double At(double share)
    {
        double u = fineOnLeft ? share : 1 - share;
        double fromFine = stretch == 0 ? u : Math.Sinh(stretch * u) / Math.Sinh(stretch);
        return this.LengthMm * (fineOnLeft ? fromFine : 1 - fromFine);
    }

    // sinh(s)/s = wanted, by repeating s = asinh(wanted s); the exact value does not matter, that it is always the same does.
    private static double StretchOf(double wanted)
    {
        double s = Math.Max(1, Math.Log(2 * wanted));
        for (int i = 0; i < 40; i++)
        {
            s = Math.Asinh(wanted * s);
        }

        return s;
    }
}
