using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>
/// The outline of a section unrolled: flat faces with folds between them, in mm from the beginning of the first face. The
/// corners are given in order with the steel on the left, so that a turn to the left is convex.
/// </summary>
internal sealed class SectionOutline
{
    private SectionOutline(double perimeterMm, Fold[] folds)
    {
        this.PerimeterMm = perimeterMm;
        this.Folds = folds;
    }

    /// <summary>Sum of all faces and folds.</summary>
    internal double PerimeterMm { get; }

    /// <summary>In order; the last one ends where the first face begins.</summary>
    internal Fold[] Folds { get; }

    /// <summary>Walks round the corners; the first face leads from the first corner to the second.</summary>
    internal static SectionOutline Walk<TSteps>((double X, double Y, double Radius)[] corners, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        int count = corners.Length;
        double[] sides = new double[count];
        double[] headings = new double[count];
        double[] turns = new double[count];
        for (int i = 0; i < count; i++)
        {
            double right = corners[(i + 1) % count].X - corners[i].X;
            double up = corners[(i + 1) % count].Y - corners[i].Y;
            sides[i] = double.Hypot(right, up);
            headings[i] = Math.Atan2(up, right);
        }

        for (int i = 0; i < count; i++)
        {
            turns[i] = Math.IEEERemainder(headings[i] - headings[(i + count - 1) % count], 2 * Math.PI) * 180 / Math.PI;
        }

        var folds = new Fold[count];
        double at = 0;
        for (int i = 0; i < count; i++)
        {
            int next = (i + 1) % count;
            double turn = Math.Abs(turns[next]);

            // A radius that fills its face may leave minus nothing of it.
            at += Math.Max(0, SectionKernel.FaceMm(sides[i], corners[i].Radius, Math.Abs(turns[i]), corners[next].Radius, turn, steps));
            double run = SectionKernel.FoldRunMm(corners[next].Radius, turn, steps);
            folds[i] = new Fold(at, run, turn, corners[next].Radius, turns[next] > 0);
            at += run;
        }

        return new(at, folds);
    }
}
