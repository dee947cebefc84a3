using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Contact;

/// <summary>A window or an opening on the unrolled surface, in mm there: on a bend its extent along grows further in.</summary>
/// <param name="X">Middle along.</param>
/// <param name="Y">Middle around, within the first turn.</param>
/// <param name="HalfX">Half the extent along.</param>
/// <param name="HalfY">Half the extent around.</param>
/// <param name="IsRound">Whether it is a disc (on a bend an ellipse on the unrolled surface).</param>
/// <param name="Weight">The least that a unit of unrolled area within it is on the steel.</param>
internal readonly record struct BareSpot(double X, double Y, double HalfX, double HalfY, bool IsRound, double Weight)
{
    internal double LowX => this.X - this.HalfX;

    internal double HighX => this.X + this.HalfX;

    internal double LowY => this.Y - this.HalfY;

    internal double HighY => this.Y + this.HalfY;

    internal static BareSpot Of(ContactWindow window, UnrolledSurface surface)
    {
        double y = surface.IsClosed ? Turned(window.AroundMm, surface.GirthMm) : window.AroundMm;
        double half = window.WidthMm / 2;
        double factor = surface.Factor(y, default(Provenance.NoSteps));
        return new(window.AlongMm, y, window.LengthMm / 2 / factor, half, window.IsRound, surface.LeastFactor(y - half, y + half));
    }

    internal static BareSpot Of(PanelOpening opening, UnrolledSurface surface) => new(
        (surface.LengthMm / 2) + opening.RightMm, (surface.GirthMm / 2) + opening.UpMm, opening.WidthMm / 2, opening.HeightMm / 2, opening.IsRound, 1);

    /// <summary>A place around, brought into the first turn.</summary>
    internal static double Turned(double aroundMm, double girthMm)
    {
        double within = aroundMm - (Math.Floor(aroundMm / girthMm) * girthMm);
        return within >= girthMm ? 0 : within;
    }

    /// <summary>Whether two spots share area; touching is allowed, to a billionth of their size.</summary>
    internal bool Overlaps(in BareSpot other, double girthMm, bool closed)
    {
        double dy = Math.Abs(this.Y - other.Y);
        dy = closed ? Math.Min(dy, girthMm - dy) : dy;
        double dx = Math.Abs(this.X - other.X);
        double reachX = this.HalfX + other.HalfX;
        double reachY = this.HalfY + other.HalfY;
        if (WithAllowance.AtLeast(dx, reachX) || WithAllowance.AtLeast(dy, reachY))
        {
            return false;
        }

        return (this.IsRound, other.IsRound) switch
        {
            (false, false) => true,
            (true, true) => WithAllowance.Below(Math.Sqrt(Squared(dx / reachX) + Squared(dy / reachY)), 1),
            (true, false) => this.Reaches(dx - other.HalfX, dy - other.HalfY),
            _ => other.Reaches(dx - this.HalfX, dy - this.HalfY),
        };
    }

    // Whether a round spot reaches over the nearest corner or side of a rectangle at these distances from its middle.
    private bool Reaches(double dx, double dy) =>
        WithAllowance.Below(Math.Sqrt(Squared(Math.Max(0, dx) / this.HalfX) + Squared(Math.Max(0, dy) / this.HalfY)), 1);

    private static double Squared(double value) => value * value;
}
