namespace SacrificialTape.Surfaces;

/// <summary>
/// An eccentric reducer unrolled round one of its generators, in doubles (mm, mm2, radians from the straight side). With d
/// half the difference of the diameters, H the length and g = sqrt(H^2 + 2 d^2 (1 - cos t)) the generator, the angle in
/// the plane between neighbouring generators is d sqrt(H^2 + d^2 (1 - cos t)^2) / g^2 dt, and a rim leaves its generator
/// at the angle whose cosine is d sin(t) / g. All of it stays finite when both ends become equal.
/// </summary>
internal static class ObliqueConeKernel
{
    private const int StepsToEdge = 64;

    /// <summary>What a straight strip centred on a generator meets of the surface; null if an edge leaves it before its ends.</summary>
    internal static ObliqueBand? Band(double largeMm, double smallMm, double lengthMm, double at, double widthMm)
    {
        double difference = (largeMm - smallMm) / 2;
        double generator = Math.Sqrt((lengthMm * lengthMm) + (2 * difference * difference * (1 - Math.Cos(at))));
        var large = new Rim(largeMm / 2, difference, lengthMm, generator);
        var small = new Rim(smallMm / 2, difference, lengthMm, 0);
        if (Trace(large, at, widthMm / 2, 1) is not { } largeAhead
            || Trace(large, at, widthMm / 2, -1) is not { } largeBehind
            || Trace(small, at, widthMm / 2, 1) is not { } smallAhead
            || Trace(small, at, widthMm / 2, -1) is not { } smallBehind)
        {
            return null;
        }

        double over = Math.Max(largeAhead.Highest, largeBehind.Highest) - Math.Min(smallAhead.Lowest, smallBehind.Lowest) - generator;
        double area = largeAhead.Area + largeBehind.Area - smallAhead.Area - smallBehind.Area;
        return new ObliqueBand(over, area);
    }

    // Along a rim from its generator until it is half a strip away, by the classical Runge-Kutta rule.
    private static Reach? Trace(in Rim rim, double at, double halfMm, int direction)
    {
        double step = direction * halfMm / rim.RadiusMm / StepsToEdge;
        var here = new Spot(at, 0, rim.StartMm, 0, 0);
        double highest = here.X;
        double lowest = here.X;
        while (true)
        {
            Spot next = rim.After(here, step);
            if (Math.Abs(next.At - at) > Math.PI || direction * (next.Y - here.Y) <= 0)
            {
                return null;
            }

            bool reached = direction * next.Y >= halfMm;
            if (reached)
            {
                // The last step is shortened until its end lies on the edge.
                double part = step;
                for (int i = 0; i < 6; i++)
                {
                    part += ((direction * halfMm) - next.Y) / rim.Turning(next).Y;
                    next = rim.After(here, part);
                }
            }

            // The highest or lowest point may lie between two stations.
            double slopeHere = rim.Turning(here).X;
            double slopeNext = rim.Turning(next).X;
            if (slopeHere * slopeNext < 0)
            {
                double between = rim.After(here, (next.At - here.At) * slopeHere / (slopeHere - slopeNext)).X;
                highest = Math.Max(highest, between);
                lowest = Math.Min(lowest, between);
            }

            here = next;
            highest = Math.Max(highest, here.X);
            lowest = Math.Min(lowest, here.X);
            if (reached)
            {
                return new Reach(highest, lowest, direction * here.Area);
            }
        }
    }

    private readonly record struct Reach(double Highest, double Lowest, double Area);

    // Where on the rim, by how much its generator is turned, its place along and across the strip, area under it so far.
    private readonly record struct Spot(double At, double Turned, double X, double Y, double Area)
    {
        internal Spot Moved(in Spot rate, double by) => new(
            this.At + (rate.At * by), this.Turned + (rate.Turned * by), this.X + (rate.X * by), this.Y + (rate.Y * by), this.Area + (rate.Area * by));
    }

    private readonly record struct Rim(double RadiusMm, double DifferenceMm, double LengthMm, double StartMm)
    {
        internal Spot Turning(in Spot spot)
        {
            (double sine, double cosine) = Math.SinCos(spot.At);
            double square = (this.LengthMm * this.LengthMm) + (2 * this.DifferenceMm * this.DifferenceMm * (1 - cosine));
            double slant = double.Hypot(this.LengthMm, this.DifferenceMm * (1 - cosine));
            double leaving = Math.Atan2(slant, this.DifferenceMm * sine) + spot.Turned;
            (double across, double along) = Math.SinCos(leaving);
            return new(1, this.DifferenceMm * slant / square, this.RadiusMm * along, this.RadiusMm * across, spot.X * this.RadiusMm * across);
        }

        internal Spot After(in Spot spot, double step)
        {
            Spot first = this.Turning(spot);
            Spot second = this.Turning(spot.Moved(first, step / 2));
            Spot third = this.Turning(spot.Moved(second, step / 2));
            Spot fourth = this.Turning(spot.Moved(third, step));
            return spot.Moved(first, step / 6).Moved(second, step / 3).Moved(third, step / 3).Moved(fourth, step / 6);
        }
    }
}
