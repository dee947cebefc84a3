using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests;

/// <summary>A surface of revolution of one of eight forms, and a strip that may be laid on it.</summary>
/// <param name="Form">0 hemisphere, 1 and 2 ellipsoid by its outside and inside, 3 torisphere, 4 cone with a tip, 5 cap, 6 reducer, 7 column.</param>
/// <param name="DiameterMm">Of the low edge; of the inside for form 2.</param>
/// <param name="Share">From 0 to 1: how deep, how sharp or how tapered.</param>
/// <param name="FlangeMm">Straight flange of a head.</param>
/// <param name="WidthShare">Strip width over what the surface takes.</param>
/// <param name="LapShare">Lap over strip width.</param>
public sealed record RevolvedCase(int Form, double DiameterMm, double Share, double FlangeMm, double WidthShare, double LapShare)
{
    internal const double PlateMm = 12;

    internal bool Closes => this.Form < 6;

    internal double DepthMm => this.DiameterMm * (0.06 + (0.9 * this.Share));

    internal double KnuckleMm => this.DiameterMm * (0.02 + (0.45 * this.Share));

    internal double CrownMm => this.DiameterMm * (0.55 + this.Share);

    internal double SmallMm => this.DiameterMm * (0.1 + (0.85 * this.Share));

    internal double HeightMm => this.DiameterMm * (this.Form == 7 ? 6 : 0.8);

    internal double WidthMm => Math.Max(1, Math.Round(0.2 * this.DiameterMm * this.WidthShare, 2));

    internal double LapMm => Math.Floor(this.WidthMm * this.LapShare * 100) / 100;

    internal double WholeFlangeMm => this.Closes ? this.FlangeMm : 0;

    internal Surface Surface() => this.Form switch
    {
        0 => HemisphericalHead.FromOutside(Mm(this.DiameterMm), Mm(this.FlangeMm)),
        1 => EllipsoidalHead.FromOutside(Mm(this.DiameterMm), Mm(this.DepthMm), Mm(this.FlangeMm)),
        2 => EllipsoidalHead.FromInside(Mm(this.DiameterMm), Mm(this.DepthMm), Mm(PlateMm), Mm(this.FlangeMm)),
        3 => TorisphericalHead.FromOutside(Mm(this.DiameterMm), Mm(this.CrownMm), Mm(this.KnuckleMm), Mm(this.FlangeMm)),
        4 => ConicalHead.FromOutside(Mm(this.DiameterMm), Mm(this.DepthMm), Mm(this.FlangeMm)),
        5 => Cap.FromOutside(Mm(this.DiameterMm), Mm((this.DiameterMm / 4) + this.FlangeMm)),
        6 => new ConcentricReducer(Mm(this.DiameterMm), Mm(this.SmallMm), Mm(this.HeightMm)),
        _ => new TaperedColumn(Mm(this.DiameterMm), Mm(this.SmallMm), Mm(this.HeightMm)),
    };

    internal StripStock Strip() => Stock(this.WidthMm);
}
