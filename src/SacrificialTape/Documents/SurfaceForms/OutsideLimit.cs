namespace SacrificialTape.Documents;

/// <summary>
/// Heads and hollow sections keep their outside only. One stated by an inside at the very end of its range is larger
/// outside than a reader accepts: such a one is refused when it is written, not when it is needed.
/// </summary>
internal static class OutsideLimit
{
    private const double MostMm = 100_000;

    internal static void Hold(double outsideMm, string place)
    {
        if (outsideMm > MostMm)
        {
            throw new ArgumentException(FormattableString.Invariant($"{place}: {outsideMm} mm outside is more than a document can give back, {MostMm} mm."));
        }
    }
}
