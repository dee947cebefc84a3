using System.Globalization;

namespace SacrificialTape.Surfaces;

/// <summary>
/// The section of a surface of revolution from its low edge (rim, large end, foot) to its crown or small end, by length
/// along the steel. On the way the radius never grows and the slope never falls: the surfaces known here bulge outward
/// or are straight. Lengths in mm.
/// </summary>
internal sealed class Meridian
{
    private const double FlatTip = 1e-9;

    private readonly MeridianSegment[] segments;
    private readonly double[] starts;

    private Meridian(bool closes, MeridianSegment[] segments)
    {
        this.Closes = closes;
        this.segments = [.. segments.Where(static one => one.LengthMm > 0)];
        this.starts = new double[this.segments.Length + 1];
        for (int i = 0; i < this.segments.Length; i++)
        {
            this.starts[i + 1] = this.starts[i] + this.segments[i].LengthMm;
        }
    }

    /// <summary>Whether it reaches the axis: a head does, a reducer does not.</summary>
    internal bool Closes { get; }

    /// <summary>Whether it reaches the axis in a point instead of a round crown.</summary>
    internal bool EndsInTip => this.Closes && this.MostSlope < 1 - FlatTip;

    internal double LengthMm => this.starts[^1];

    /// <summary>Length of what a disc on the crown may lie on: all but a straight flange.</summary>
    internal double DishMm => this.LengthMm - (this.segments.Length > 1 && this.segments[0].IsStraight ? this.starts[1] : 0);

    /// <summary>The slope at the crown or small end, which no other exceeds.</summary>
    internal double MostSlope => this.segments[^1].At(this.segments[^1].LengthMm).Slope;

    /// <summary>Whether the section has a corner, as where a cone meets its straight flange.</summary>
    internal bool HasCorner => Enumerable.Range(1, this.segments.Length - 1)
        .Any(i => this.segments[i].At(0).Slope - this.segments[i - 1].At(this.segments[i - 1].LengthMm).Slope > 1e-6);

    /// <summary>Where segments begin and end.</summary>
    internal ReadOnlySpan<double> Joints => this.starts;

    /// <summary>Whether the low end is a cone or a cylinder, so that it unrolls flat.</summary>
    internal bool BeginsStraight => this.segments[0].IsStraight;

    internal bool IsStraight(int segment) => this.segments[segment].IsStraight;

    /// <summary>The spot at a distance from the low edge; past a straight end the line is carried on.</summary>
    internal MeridianPoint At(double fromEdgeMm)
    {
        int segment = this.Segment(fromEdgeMm);
        return this.segments[segment].At(fromEdgeMm - this.starts[segment]);
    }

    /// <summary>The spot seen from the crown's side of a joint, where a corner has two slopes.</summary>
    internal MeridianPoint AtStartOf(int segment) => this.segments[segment].At(0);

    internal double AreaTo(double fromEdgeMm)
    {
        int last = this.Segment(fromEdgeMm);
        double area = this.segments[last].AreaTo(fromEdgeMm - this.starts[last]);
        for (int i = 0; i < last; i++)
        {
            area += this.segments[i].AreaTo(this.segments[i].LengthMm);
        }

        return area;
    }

    /// <summary>The greatest curvature from the low edge to a spot; within a segment it stands at one of the ends.</summary>
    internal double MostCurvatureTo(double fromEdgeMm)
    {
        double most = 0;

        // On a joint both pieces count.
        int last = this.Segment(fromEdgeMm);
        last = last < this.segments.Length - 1 && fromEdgeMm >= this.starts[last + 1] ? last + 1 : last;
        for (int i = 0; i <= last; i++)
        {
            double end = i == last ? Math.Min(fromEdgeMm - this.starts[i], this.segments[i].LengthMm) : this.segments[i].LengthMm;
            most = Math.Max(most, Math.Max(this.segments[i].At(0).Curvature, this.segments[i].At(end).Curvature));
        }

        return most;
    }

    /// <summary>How far from the low edge the radius has shrunk to a given one; the whole length when it never does.</summary>
    internal double WhereRadiusMm(double radiusMm)
    {
        double low = 0;
        double high = this.LengthMm;
        if (this.At(high).RadiusMm >= radiusMm)
        {
            return high;
        }

        for (int i = 0; i < 100 && high - low > 1e-12 * this.LengthMm; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = this.At(middle).RadiusMm > radiusMm ? (middle, high) : (low, middle);
        }

        return high;
    }

    internal static Meridian Open(double largeMm, double smallMm, double slantMm) =>
        new(false, [new MeridianLine(largeMm / 2, (largeMm - smallMm) / 2 / slantMm, slantMm)]);

    internal static Meridian Head(double diameterMm, double straightFlangeMm, params MeridianSegment[] dish) =>
        new(true, [new MeridianLine(diameterMm / 2, 0, straightFlangeMm), .. dish]);

    /// <summary>The meridian of a surface that is laid on by meridians and circles.</summary>
    internal static Meridian Of(Surface surface, string parameter) => surface switch
    {
        null => throw new ArgumentNullException(parameter),
        FlatHead => throw new ArgumentException(
            "A flat head is a disc: lay its face as a circular panel, and its straight flange as a straight pipe.", parameter),
        Head head => head.Meridian,
        ConcentricReducer cone => Open(cone.LargeMm, cone.SmallMm, ReducerKernel.SlantMm(cone.LargeMm, cone.SmallMm, cone.LengthMm, default(Provenance.NoSteps))),
        TaperedColumn { BasePlate: not null } => throw new ArgumentException(
            "A base plate has faces of its own: lay the wall as a column without plate, and the faces of the plate as panels.", parameter),
        TaperedColumn column => column.Meridian,
        _ => throw new ArgumentException(
            string.Create(CultureInfo.InvariantCulture, $"A {surface.GetType().Name} is not laid on by meridians and circles: give a dished or conical head, a cap, a concentric reducer or a tapered column."), parameter),
    };

    private int Segment(double fromEdgeMm)
    {
        int segment = 0;
        while (segment < this.segments.Length - 1 && fromEdgeMm > this.starts[segment + 1])
        {
            segment++;
        }

        return segment;
    }
}
