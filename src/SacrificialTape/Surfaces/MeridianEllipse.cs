namespace SacrificialTape.Surfaces;

/// <summary>
/// A quarter of an ellipse from rim to crown, or the line one plate thickness outside of it. Length and area are
/// integrated piece by piece; pieces are short where the ellipse may be sharp, at both ends.
/// </summary>
internal sealed class MeridianEllipse : MeridianSegment
{
    private const int Pieces = 64;

    // Gauss-Legendre, eight points.
    private static readonly double[] Nodes = [0.18343464249564980, 0.52553240991632899, 0.79666647741362674, 0.96028985649753623];
    private static readonly double[] Weights = [0.36268378337836198, 0.31370664587788729, 0.22238103445337447, 0.10122853629037626];

    private readonly double acrossMm;
    private readonly double depthMm;
    private readonly double plateMm;
    private readonly double[] turns = new double[Pieces + 1];
    private readonly double[] lengths = new double[Pieces + 1];
    private readonly double[] areas = new double[Pieces + 1];

    internal MeridianEllipse(double radiusMm, double depthMm, double plateMm)
    {
        this.acrossMm = radiusMm;
        this.depthMm = depthMm;
        this.plateMm = plateMm;
        for (int i = 0; i < Pieces; i++)
        {
            this.turns[i + 1] = Math.PI / 2 * Math.Pow(Math.Sin(Math.PI * (i + 1) / (2 * Pieces)), 2);
            this.lengths[i + 1] = this.lengths[i] + Integral(this.turns[i], this.turns[i + 1], this.Speed);
            this.areas[i + 1] = this.areas[i] + Integral(this.turns[i], this.turns[i + 1], this.Sweep);
        }
    }

    internal override double LengthMm => this.lengths[Pieces];

    internal override MeridianPoint At(double alongMm)
    {
        (double sine, double cosine) = Math.SinCos(this.TurnAt(alongMm, out _));
        double reach = double.Hypot(this.acrossMm * sine, this.depthMm * cosine);
        double across = (this.acrossMm * reach / this.depthMm) + this.plateMm;
        double along = (reach * reach * reach / (this.acrossMm * this.depthMm)) + this.plateMm;
        double radius = Math.Max(0, (this.acrossMm * cosine) + (this.plateMm * this.depthMm * cosine / reach));
        return new(radius, this.acrossMm * sine / reach, 1 / (across * along));
    }

    internal override double AreaTo(double alongMm)
    {
        double turn = this.TurnAt(alongMm, out int piece);
        return this.areas[piece] + Integral(this.turns[piece], turn, this.Sweep);
    }

    // The eccentric angle from the rim that lies at a length along the steel.
    private double TurnAt(double alongMm, out int piece)
    {
        if (alongMm >= this.LengthMm)
        {
            piece = Pieces - 1;
            return Math.PI / 2;
        }

        int found = Array.BinarySearch(this.lengths, alongMm);
        piece = Math.Clamp(found >= 0 ? found : ~found - 1, 0, Pieces - 1);
        double low = this.turns[piece];
        double high = this.turns[piece + 1];
        double turn = low + ((high - low) * (alongMm - this.lengths[piece]) / (this.lengths[piece + 1] - this.lengths[piece]));
        for (int i = 0; i < 8; i++)
        {
            double miss = alongMm - this.lengths[piece] - Integral(this.turns[piece], turn, this.Speed);
            double next = Math.Clamp(turn + (miss / this.Speed(turn)), low, high);
            if (next == turn)
            {
                break;
            }

            turn = next;
        }

        return turn;
    }

    // Length along the steel for each radian of eccentric angle; the plate adds its thickness times the turning normal.
    private double Speed(double turn)
    {
        double reach = this.Reach(turn);
        return reach + (this.plateMm * this.acrossMm * this.depthMm / (reach * reach));
    }

    private double Sweep(double turn)
    {
        double cosine = Math.Cos(turn);
        double radius = (this.acrossMm * cosine) + (this.plateMm * this.depthMm * cosine / this.Reach(turn));
        return 2 * Math.PI * radius * this.Speed(turn);
    }

    private double Reach(double turn)
    {
        (double sine, double cosine) = Math.SinCos(turn);
        return double.Hypot(this.acrossMm * sine, this.depthMm * cosine);
    }

    private static double Integral(double from, double to, Func<double, double> function)
    {
        double half = (to - from) / 2;
        double middle = (to + from) / 2;
        double sum = 0;
        for (int i = 0; i < Nodes.Length; i++)
        {
            sum += Weights[i] * (function(middle - (half * Nodes[i])) + function(middle + (half * Nodes[i])));
        }

        return sum * half;
    }
}
