namespace SacrificialTape.Tests.Wrapping;

/// <summary>
/// The section of a surface of revolution by its radius: slope, length from the crown, curvature, and where the shortest
/// line from a spot to a meridian falls. Written from the dimensions of the case; nothing of the library's goes in.
/// </summary>
internal sealed class RevolvedSection
{
    private const int Nodes = 160;

    private readonly Func<double, double> slope;
    private readonly double[] radii;
    private readonly double[] lengths;

    internal RevolvedSection(RevolvedCase given)
    {
        this.Flange = given.WholeFlangeMm;
        this.Rim = (given.DiameterMm / 2) + (given.Form == 2 ? RevolvedCase.PlateMm : 0);
        this.Small = given.Closes ? 0 : given.SmallMm / 2;
        this.slope = Slope(given);

        // Length from the axis (or from where a cone would reach it): integral of dr / slope; r = R sin(v) tames the rim.
        const int Steps = 20_000;
        this.radii = new double[Steps + 1];
        this.lengths = new double[Steps + 1];
        for (int i = 1; i <= Steps; i++)
        {
            double middle = this.Rim * Math.Sin(Math.PI / 2 * (i - 0.5) / Steps);
            double rate = this.Rim * Math.Cos(Math.PI / 2 * (i - 0.5) / Steps) / this.slope(middle);
            this.radii[i] = this.Rim * Math.Sin(Math.PI / 2 * i / Steps);
            this.lengths[i] = this.lengths[i - 1] + (rate * Math.PI / 2 / Steps);
        }
    }

    internal double Rim { get; }

    internal double Small { get; }

    internal double Flange { get; }

    /// <summary>Length of the meridian from the low edge.</summary>
    internal double Length => this.FromEdge(this.Small);

    /// <summary>Distance of a circle from the low edge; on the dish or cone.</summary>
    internal double FromEdge(double radius) => this.Flange + this.lengths[^1] - this.FromAxis(radius);

    internal double SlopeAt(double radius) => this.slope(radius);

    internal double RadiusAt(double fromEdge)
    {
        if (fromEdge <= this.Flange)
        {
            return this.Rim;
        }

        double low = 0;
        double high = this.Rim;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = this.FromEdge(middle) > fromEdge ? (middle, high) : (low, middle);
        }

        return high;
    }

    /// <summary>K = -(m^2)' / (2 r), by differences.</summary>
    internal double CurvatureAt(double radius)
    {
        double h = Math.Min(1e-5 * this.Rim, Math.Min(radius, this.Rim - radius) / 2);
        double high = Math.Pow(this.slope(radius + h), 2);
        double low = Math.Pow(this.slope(radius - h), 2);
        return (low - high) / (4 * h * radius);
    }

    /// <summary>
    /// The shortest line from a spot to a meridian that lies an angle away: the radius of the spot on the meridian where it
    /// falls square, and its length. By Clairaut's relation the angle turned is the integral of d psi / m along it, the
    /// length that of r0 / (m sin^2 psi), where sin psi = r0 / r.
    /// </summary>
    internal (double Radius, double Distance) Nearest(double radius, double angle)
    {
        double low = 0;
        double high = radius;
        for (int i = 0; i < 46; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = this.Turned(middle, radius).Angle > angle ? (middle, high) : (low, middle);
        }

        // Close to the rim of a dish the line runs along the rim, and its foot cannot be told from the spot itself.
        double foot = (low + high) / 2;
        return radius - foot < 1e-9 * radius ? (radius, radius * angle) : (foot, this.Turned(foot, radius).Length);
    }

    /// <summary>How far a shortest line that leaves a meridian square runs until it has turned by an angle; null when it leaves the dish first.</summary>
    internal double? Reach(double foot, double angle)
    {
        if (this.Turned(foot, this.Rim).Angle < angle)
        {
            return null;
        }

        double low = foot;
        double high = this.Rim;
        for (int i = 0; i < 46; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = this.Turned(foot, middle).Angle < angle ? (middle, high) : (low, middle);
        }

        return this.Turned(foot, high).Length;
    }

    private (double Angle, double Length) Turned(double foot, double radius)
    {
        double from = Math.Asin(Math.Min(1, foot / radius));
        double span = (Math.PI / 2) - from;
        double angle = 0;
        double length = 0;
        for (int i = 0; i < Nodes; i++)
        {
            double v = (i + 0.5) / Nodes;
            double psi = from + (span * v * v);
            double sine = Math.Sin(psi);
            double rate = 2 * v * span / Nodes / Math.Max(1e-12, this.slope(Math.Min(this.Rim, foot / sine)));
            angle += rate;
            length += rate * foot / (sine * sine);
        }

        return (angle, length);
    }

    private double FromAxis(double radius)
    {
        int found = Array.BinarySearch(this.radii, radius);
        int at = Math.Clamp(found >= 0 ? found : ~found - 1, 0, this.radii.Length - 2);
        double share = (radius - this.radii[at]) / (this.radii[at + 1] - this.radii[at]);
        return this.lengths[at] + (share * (this.lengths[at + 1] - this.lengths[at]));
    }

    private static Func<double, double> Slope(RevolvedCase given)
    {
        double a = given.DiameterMm / 2;
        double h = given.Form == 5 ? a / 2 : given.DepthMm;
        double Ellipse(double cosine)
        {
            double sine = Math.Sqrt(Math.Max(0, 1 - (cosine * cosine)));
            return a * sine / double.Hypot(a * sine, h * cosine);
        }

        // The point of the inner ellipse under a circle of the outside.
        double Cosine(double r)
        {
            double low = 0;
            double high = 1;
            for (int i = 0; i < 52; i++)
            {
                double middle = (low + high) / 2;
                double normal = Math.Sqrt(Math.Max(0, 1 - Math.Pow(Ellipse(middle), 2)));
                (low, high) = (a * middle) + (RevolvedCase.PlateMm * normal) < r ? (middle, high) : (low, middle);
            }

            return high;
        }

        switch (given.Form)
        {
            case 0:
                return r => Math.Sqrt(Math.Max(0, 1 - (r * r / (a * a))));
            case 1 or 5:
                return r => Ellipse(Math.Min(1, r / a));
            case 2:
                return Tabled(r => Ellipse(Cosine(r)), a + RevolvedCase.PlateMm);
            case 3:
                double centre = a - given.KnuckleMm;
                double edge = given.CrownMm * centre / (given.CrownMm - given.KnuckleMm);
                return r =>
                {
                    double sine = r <= edge ? r / given.CrownMm : Math.Min(1, (r - centre) / given.KnuckleMm);
                    return Math.Sqrt(Math.Max(0, 1 - (sine * sine)));
                };
            case 4:
                return _ => a / double.Hypot(a, h);
            default:
                double narrower = a - (given.SmallMm / 2);
                return _ => narrower / double.Hypot(narrower, given.HeightMm);
        }
    }

    // The square of the slope runs smoothly to zero at the rim, so that it is what is read between entries.
    private static Func<double, double> Tabled(Func<double, double> slope, double rim)
    {
        const int Entries = 20_000;
        double[] squares = [.. Enumerable.Range(0, Entries + 1).Select(i => Math.Pow(slope(rim * i / Entries), 2))];
        return r =>
        {
            double place = Math.Clamp(r / rim, 0, 1) * Entries;
            int at = Math.Min(Entries - 1, (int)place);
            return Math.Sqrt(((1 - (place - at)) * squares[at]) + ((place - at) * squares[at + 1]));
        };
    }
}
