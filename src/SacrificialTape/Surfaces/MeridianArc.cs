namespace SacrificialTape.Surfaces;

/// <summary>
/// An arc of a circle: a zone of a torus, or of a sphere when its centre lies on the axis. The angle is that between the
/// axis and the normal of the steel.
/// </summary>
internal sealed class MeridianArc(double centreMm, double arcMm, double fromAngle, double toAngle) : MeridianSegment
{
    internal override double LengthMm => arcMm * (fromAngle - toAngle);

    internal override MeridianPoint At(double alongMm)
    {
        (double sine, double cosine) = Math.SinCos(Math.Clamp(fromAngle - (alongMm / arcMm), toAngle, fromAngle));
        double radius = centreMm + (arcMm * sine);
        return new(radius, cosine, centreMm == 0 ? 1 / (arcMm * arcMm) : sine / (radius * arcMm));
    }

    internal override double AreaTo(double alongMm)
    {
        double turned = alongMm / arcMm;

        // cos(b) - cos(a) = 2 sin((a + b) / 2) sin((a - b) / 2) keeps its digits on short arcs.
        double rise = 2 * Math.Sin(fromAngle - (turned / 2)) * Math.Sin(turned / 2);
        return 2 * Math.PI * arcMm * ((centreMm * turned) + (arcMm * rise));
    }
}
