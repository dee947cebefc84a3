using FsCheck;
using FsCheck.Fluent;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests;

/// <summary>Sections of every kind that has faces, with strips from narrow to wider than the outline is long.</summary>
public static class SectionCases
{
    public static Arbitrary<SectionCase> Sections() => (
        from kind in Gen.Choose(0, 5)
        from h in Gen.Choose(30, 900)
        from b in Gen.Choose(20, 400)
        from share in Gen.Choose(0, 100)
        from radius in Gen.Choose(0, 100)
        from width in Gen.Choose(10, 400)
        from lap in Gen.Choose(0, 30)
        from length in Gen.Choose(100, 9000)
        select Make(kind, h, b, share / 100.0, radius / 100.0, length) with { WidthMm = width, LapMm = Math.Min(lap, width * 0.8) })
        .ToArbitrary();

    public static SectionCase Make(int kind, double h, double b, double share, double radius, double length)
    {
        Length l = Mm(length);
        double t = (0.02 + (0.1 * share)) * Math.Min(h, b);
        switch (kind)
        {
            case 0:
                {
                    double r = radius * Math.Min((b - t) / 2, (h / 2) - (1.5 * t));
                    double f = 1.5 * t;
                    return Of("I", new ISection(Mm(h), Mm(b), Mm(t), Mm(f), Mm(r), l), length,
                        (b / 2, h, 0), (-b / 2, h, 0), (-b / 2, h - f, 0), (-t / 2, h - f, r), (-t / 2, f, r), (-b / 2, f, 0),
                        (-b / 2, 0, 0), (b / 2, 0, 0), (b / 2, f, 0), (t / 2, f, r), (t / 2, h - f, r), (b / 2, h - f, 0));
                }

            case 1:
                {
                    double f = 2 * t;
                    double root = radius * 0.3 * Math.Min(b, h / 2);
                    double toe = radius * t * 0.4;
                    double slope = Math.Min(0.08 * share, Math.Min(1.5 * f / b, 0.2 * h / b));
                    double thin = f - (slope * b / 2);
                    double thick = f + (slope * ((b / 2) - t));
                    return Of("channel", Channel.WithTaperedFlanges(Mm(h), Mm(b), Mm(t), Mm(f), Mm(root), Mm(toe), Angle.FromRadians(Math.Atan(slope)), l), length,
                        (0, h, 0), (0, 0, 0), (b, 0, 0), (b, thin, toe), (t, thick, root), (t, h - thick, root), (b, h - thin, toe), (b, h, 0));
                }

            case 2:
                {
                    (double a, double s) = (Math.Max(h, b), Math.Min(h, b));
                    double toe = radius * t;
                    double root = radius * (s - t - toe);
                    return Of("angle", new AngleSection(Mm(a), Mm(s), Mm(t), Mm(root), Mm(toe), l), length,
                        (0, a, 0), (0, 0, 0), (s, 0, 0), (s, t, toe), (t, t, root), (t, a, toe));
                }

            case 3:
                {
                    double r = radius * Math.Min((b - t) / 2, h - t);
                    return Of("tee", new TeeSection(Mm(h), Mm(b), Mm(t), Mm(t), Mm(r), l), length,
                        (b / 2, h, 0), (-b / 2, h, 0), (-b / 2, h - t, 0), (-t / 2, h - t, r), (-t / 2, 0, 0), (t / 2, 0, 0), (t / 2, h - t, r), (b / 2, h - t, 0));
                }

            default:
                {
                    double r = radius * Math.Min(h, b) / 2;
                    return Of("hollow", RectangularHollowSection.FromOutside(Mm(h), Mm(b), Mm(t), Mm(r), l), length, (b, h, r), (0, h, r), (0, 0, r), (b, 0, r));
                }
        }
    }

    private static SectionCase Of(string kind, Section section, double length, params (double X, double Y, double Radius)[] corners) =>
        new(kind, section, corners, length, 100, 10);
}
