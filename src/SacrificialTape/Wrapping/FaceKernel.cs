using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Parallel strips on a flat face, in doubles (mm). The lowest strip begins at the edge of the face, the topmost ends at
/// the other; each is as long as the face is anywhere within its band.
/// </summary>
internal static class FaceKernel
{
    private const double LeastPieceMm = 0.0005;

    internal static FaceCut Cut<TSteps>(Face face, StripStock stock, double leastLapMm, LayChoices choices, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = stock.WidthMm;
        double span = face.Outline.AcrossMm;
        double count = SpanKernel.OpenCount(span, width, leastLapMm, steps);
        int strips = StripCount.Whole(count, width, leastLapMm);
        double lap = 0;
        double layers = choices.Passes; // a single strip has no neighbour to wander from
        if (strips > 1)
        {
            lap = SpanKernel.OpenLapMm(count, width, span, steps);
            layers = SpanKernel.OpenLayers(choices.Passes, width, choices.WanderMm, width - lap, steps);
        }

        double placed = WholeMm2(face.Outline) - face.Openings.Sum(static opening => WholeMm2(opening));
        double kept = KeptShare(placed, face.LooseMm2, steps);
        var tally = new FaceTally();
        double steel = !face.Outline.IsRound && face.Openings.Count == 0
            ? Alike(face, strips, width, kept, tally)
            : Unlike(face, strips, width, lap, leastLapMm, kept, tally, steps);
        if (TSteps.Records)
        {
            double on = kept * steel / 1e6;
            double area = (placed - face.LooseMm2) / 1e6;
            steps.Add(FaceFormulas.OnSteel, [kept, steel / 1e6], on);
            steps.Add(FaceFormulas.Average, [choices.Passes, on, area], choices.Passes * on / area);
        }

        return new(strips, lap, (int)layers, tally.Strips(stock, choices.Passes));
    }

    /// <summary>Where the band of each strip lies and between which ends its pieces run.</summary>
    internal static IEnumerable<(double LowMm, double HighMm, IReadOnlyList<(double From, double To)> Pieces)> Bands(
        Face face, int strips, double widthMm, double lapMm)
    {
        for (int i = 0; i < strips; i++)
        {
            double low = face.Outline.LowMm + (i * (widthMm - lapMm));
            double high = Math.Min(low + widthMm, face.Outline.HighMm);
            yield return (low, low + widthMm, Pieces(face, low, high, default(NoSteps)));
        }
    }

    /// <summary>Splices that pieces longer than the roll need.</summary>
    internal static double Splices<TSteps>(int pieces, double lengthMm, double rollMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double splices = pieces * (WithAllowance.Ceiling(lengthMm / rollMm) - 1);
        if (TSteps.Records)
        {
            steps.Add(FaceFormulas.Splices, [pieces, lengthMm, rollMm], splices);
        }

        return splices;
    }

    // A rectangle without openings in a place: all strips are one, whatever their number.
    private static double Alike(Face face, int strips, double widthMm, double kept, FaceTally tally)
    {
        double length = face.Outline.AlongMm;
        double span = face.Outline.AcrossMm;
        double share = strips == 1 ? span / widthMm : 1; // what stands over a narrow face is cut off
        tally.Add(length, strips, kept * length * span / (strips * widthMm), length * (1 - (kept * share)));
        return strips * length * widthMm * share;
    }

    private static double Unlike<TSteps>(
        Face face, int strips, double widthMm, double lapMm, double leastLapMm, double kept, FaceTally tally, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        _ = StripCount.OneByOne(strips, widthMm, leastLapMm);
        bool mirrored = face.Openings.All(static opening => opening.AcrossAtMm == 0);
        double steel = 0;
        for (int i = 0; i < strips; i++)
        {
            double low = face.Outline.LowMm + (i * (widthMm - lapMm));
            double high = Math.Min(low + widthMm, face.Outline.HighMm);
            bool shown = TSteps.Records && (!mirrored || 2 * i < strips);
            IReadOnlyList<(double From, double To)> pieces = shown ? Pieces(face, low, high, steps) : Pieces(face, low, high, default(NoSteps));
            double within = shown ? SteelMm2(face, low, high, steps) : SteelMm2(face, low, high, default(NoSteps));
            double own = SteelMm2(
                face,
                i == 0 ? face.Outline.LowMm : low + (lapMm / 2),
                i == strips - 1 ? face.Outline.HighMm : low + widthMm - (lapMm / 2),
                default(NoSteps));
            steel += within;
            double all = pieces.Sum(static piece => piece.To - piece.From);
            foreach ((double from, double to) in pieces)
            {
                double length = to - from;
                double share = length / all / widthMm;
                tally.Add(length, 1, kept * own * share, length - (kept * within * share));
            }
        }

        return steel;
    }

    private static List<(double From, double To)> Pieces<TSteps>(Face face, double lowMm, double highMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double half = LongestMm(face.Outline, lowMm, highMm, steps) / 2;
        var gaps = new List<(double From, double To)>();
        foreach (FaceShape opening in face.Openings)
        {
            if (WithAllowance.AtLeast(lowMm, opening.LowMm) && WithAllowance.AtMost(highMm, opening.HighMm))
            {
                double gap = opening.IsRound ? GapMm(opening, lowMm, highMm, steps) : opening.AlongMm;
                gaps.Add((opening.AlongAtMm - (gap / 2), opening.AlongAtMm + (gap / 2)));
            }
        }

        gaps.Sort();
        var pieces = new List<(double From, double To)>(gaps.Count + 1);
        double from = -half;
        foreach ((double gapFrom, double gapTo) in gaps)
        {
            if (gapTo - gapFrom > LeastPieceMm)
            {
                Add(pieces, from, gapFrom, true, steps);
                from = gapTo;
            }
        }

        Add(pieces, from, half, from > -half, steps);
        return pieces;
    }

    private static void Add<TSteps>(List<(double From, double To)> pieces, double from, double to, bool interrupted, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (to - from < LeastPieceMm)
        {
            return;
        }

        pieces.Add((from, to));
        if (TSteps.Records && interrupted)
        {
            steps.Add(FaceFormulas.Piece, [to, from], to - from);
        }
    }

    private static double LongestMm<TSteps>(FaceShape outline, double lowMm, double highMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (!outline.IsRound)
        {
            return outline.AlongMm;
        }

        double radius = outline.AlongMm / 2;
        double off = Math.Max(0, Math.Max(lowMm, -highMm));
        double chord = 2 * Math.Sqrt(Math.Max(0, (radius * radius) - (off * off)));
        if (TSteps.Records)
        {
            steps.Add(FaceFormulas.Chord, [radius, off], chord);
        }

        return chord;
    }

    private static double GapMm<TSteps>(FaceShape opening, double lowMm, double highMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double radius = opening.AlongMm / 2;
        double off = Math.Max(Math.Abs(lowMm - opening.AcrossAtMm), Math.Abs(highMm - opening.AcrossAtMm));
        double gap = 2 * Math.Sqrt(Math.Max(0, (radius * radius) - (off * off)));
        if (TSteps.Records)
        {
            steps.Add(FaceFormulas.Gap, [radius, off], gap);
        }

        return gap;
    }

    private static double SteelMm2<TSteps>(Face face, double lowMm, double highMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double steel = WithinMm2(face.Outline, lowMm, highMm, steps);
        foreach (FaceShape opening in face.Openings)
        {
            steel -= WithinMm2(opening, lowMm, highMm, steps);
        }

        return Math.Max(0, steel);
    }

    private static double WithinMm2<TSteps>(FaceShape shape, double lowMm, double highMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double low = Math.Max(lowMm, shape.LowMm) - shape.AcrossAtMm;
        double high = Math.Min(highMm, shape.HighMm) - shape.AcrossAtMm;
        if (high <= low)
        {
            return 0;
        }

        if (!shape.IsRound)
        {
            return (high - low) * shape.AlongMm;
        }

        double radius = shape.AlongMm / 2;
        double a = Math.Max(low, -radius);
        double b = Math.Min(high, radius);
        double area = UpToMm2(radius, b) - UpToMm2(radius, a);
        if (TSteps.Records)
        {
            steps.Add(FaceFormulas.DiscBand, [radius, b, a], area / 1e6);
        }

        return area;
    }

    private static double UpToMm2(double radius, double y) =>
        (radius * radius * Math.Asin(y / radius)) + (y * Math.Sqrt(Math.Max(0, (radius * radius) - (y * y))));

    private static double WholeMm2(FaceShape shape) => shape.AlongMm * shape.AcrossMm * (shape.IsRound ? Math.PI / 4 : 1);

    private static double KeptShare<TSteps>(double placedMm2, double looseMm2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double kept = (placedMm2 - looseMm2) / placedMm2;
        if (TSteps.Records)
        {
            steps.Add(FaceFormulas.Kept, [placedMm2 / 1e6, looseMm2 / 1e6], kept);
        }

        return kept;
    }
}
