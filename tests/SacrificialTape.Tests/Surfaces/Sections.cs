using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 200)]
public sealed class Sections
{
    [Property]
    public void Without_radii_the_perimeter_is_the_plain_sum_of_faces(SpanCase given)
    {
        double h = 20 + given.WidthMm;
        double b = h / 2;
        double web = h / 25;
        double flange = h / 15;
        Near.Equal((2 * h) + (4 * b) - (2 * web), I(h, b, web, flange, 0).Perimeter.Millimeters, 1e-14);
        Near.Equal((2 * h) + (4 * b) - (2 * web), Parallel(h, b, web, flange, 0).Perimeter.Millimeters, 1e-14);
        Near.Equal(2 * (h + b), L(h, b, flange, 0, 0).Perimeter.Millimeters, 1e-14);
        Near.Equal(2 * (h + b), new TeeSection(Mm(h), Mm(b), Mm(web), Mm(flange), Mm(0), Mm(1000)).Perimeter.Millimeters, 1e-14);
        Near.Equal(2 * (h + b), Box(h, b, flange, 0).Perimeter.Millimeters, 1e-14);

        // A radius that is almost none changes almost nothing, and a larger one shortens the outline.
        Near.Equal(I(h, b, web, flange, 0).Perimeter.Millimeters, I(h, b, web, flange, 1e-6).Perimeter.Millimeters, 1e-7);
        Assert.True(I(h, b, web, flange, h / 10).Perimeter < I(h, b, web, flange, h / 20).Perimeter);
        Assert.True(Box(h, b, flange, h / 10).Perimeter < Box(h, b, flange, h / 20).Perimeter);
    }

    [Property]
    public void Twice_the_size_has_four_times_the_area(SpanCase given)
    {
        double h = 20 + given.WidthMm;
        Section[] Of(double k) =>
        [
            new ISection(Mm(k * h), Mm(k * h / 2), Mm(k * h / 20), Mm(k * h / 10), Mm(k * h / 8), Mm(k * given.SpanMm)),
            Channel.WithTaperedFlanges(Mm(k * h), Mm(k * h / 3), Mm(k * h / 20), Mm(k * h / 10), Mm(k * h / 12), Mm(k * h / 40), Angle.FromDegrees(5), Mm(k * given.SpanMm)),
            new AngleSection(Mm(k * h), Mm(k * h / 2), Mm(k * h / 10), Mm(k * h / 8), Mm(k * h / 16), Mm(k * given.SpanMm)),
            new TeeSection(Mm(k * h), Mm(k * h / 2), Mm(k * h / 20), Mm(k * h / 10), Mm(k * h / 8), Mm(k * given.SpanMm)),
            RectangularHollowSection.HotFinished(Mm(k * h), Mm(k * h / 2), Mm(k * h / 20), Mm(k * given.SpanMm)),
            CircularHollowSection.FromOutside(Mm(k * h), Mm(k * given.SpanMm)),
        ];
        Assert.All(Of(1).Zip(Of(2)), static pair => Near.Equal(4 * pair.First.Area.SquareMeters, pair.Second.Area.SquareMeters, 1e-13));
    }

    [Fact]
    public void Units_do_not_count()
    {
        var metric = new ISection(Mm(254), Mm(127), Mm(6.35), Mm(12.7), Mm(12.7), Mm(3048));
        var inches = new ISection(
            Length.FromInches(10), Length.FromInches(5), Length.FromInches(0.25), Length.FromInches(0.5), Length.FromCentimeters(1.27), Length.FromFeet(10));
        Assert.Equal(metric, inches);
        Near.Equal(metric.Area.SquareMeters, inches.Area.SquareMeters, 1e-15);
    }

    [Fact]
    public void Two_tees_make_an_I()
    {
        // Cut through the web: two cut faces as wide as the web come free.
        var tee = new TeeSection(Mm(150), Mm(150), Mm(7.1), Mm(10.7), Mm(15), Mm(1000));
        Near.Equal(I(300, 150, 7.1, 10.7, 15).Perimeter.Millimeters + (2 * 7.1), 2 * tee.Perimeter.Millimeters, 1e-14);
    }

    [Fact]
    public void Two_channels_back_to_back_make_an_I()
    {
        double channel = Parallel(200, 80, 6, 11, 13).Perimeter.Millimeters;
        Near.Equal(I(200, 160, 12, 11, 13).Perimeter.Millimeters + (2 * 200), 2 * channel, 1e-14);
    }

    [Fact]
    public void A_taper_that_vanishes()
    {
        Section tapered = Channel.WithTaperedFlanges(Mm(200), Mm(80), Mm(6), Mm(11), Mm(13), Mm(0), Angle.FromDegrees(1e-7), Mm(1000));
        Near.Equal(Parallel(200, 80, 6, 11, 13).Perimeter.Millimeters, tapered.Perimeter.Millimeters, 1e-8);
    }

    [Fact]
    public void A_box_that_is_all_corner_is_a_tube()
    {
        Near.Equal(
            CircularHollowSection.FromOutside(Mm(100), Mm(1000)).Area.SquareMeters,
            Box(100, 100, 5, 50).Area.SquareMeters,
            1e-14);
        Near.Equal(Pipe(100, 1000).Area.SquareMeters, Box(100, 100, 5, 50).Area.SquareMeters, 1e-14);
    }

    [Fact]
    public void Inside_and_outside_are_told_apart()
    {
        RectangularHollowSection inside = RectangularHollowSection.FromInside(Mm(190), Mm(90), Mm(5), Mm(5), Mm(1000));
        Assert.Equal(Box(200, 100, 5, 10), inside);
        Near.Equal(200, inside.OutsideHeight.Millimeters, 0);
        Near.Equal(10, inside.OutsideCornerRadius.Millimeters, 0);
        Assert.Equal(CircularHollowSection.FromOutside(Mm(110), Mm(1000)), CircularHollowSection.FromInside(Mm(100), Mm(5), Mm(1000)));
    }

    [Fact]
    public void Every_size_says_on_what_it_rests()
    {
        static bool Published(string name) => name[..3] is "IPE" or "HEA" or "HEB" || name.EndsWith(" cold", StringComparison.Ordinal);
        Assert.Equal(SectionSizes.All.Count, SectionSizes.All.Select(static size => size.Designation).Distinct().Count());
        Assert.All(SectionSizes.All, size =>
        {
            Section section = size.OfLength(Mm(2000));
            Assert.Equal(Published(size.Designation) ? BasisKind.Published : BasisKind.Recalled, size.Basis.Kind);
            Assert.Equal(size.Basis, section.SizeBasis);
            Assert.Equal(size, SectionSizes.Find(size.Designation));
            Assert.Contains($"[dimensions: {size.Basis}]", section.ShowWorkings().ToString(), StringComparison.Ordinal);
            Near.Equal(section.Perimeter.Millimeters * 2000 / 1e6, section.Area.SquareMeters, 1e-15);
        });
        Assert.Null(I(300, 150, 7.1, 10.7, 15).SizeBasis);
    }

    [Fact]
    public void Sizes_are_found_whatever_the_spaces()
    {
        Assert.Equal("IPE 200", SectionSizes.Find("ipe200").Designation);
        Assert.Equal("L 50 x 50 x 5", SectionSizes.Find("L 50x50x5").ToString());
        Assert.Contains("'IPE 777' is not known here; known are IPE 80, IPE 100, IPE 120", Assert.Throws<ArgumentException>(static () => SectionSizes.Find("IPE 777")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Descriptions() => Assert.Multiple(
        static () => Assert.Equal("I section 200 x 100 x 5.6 x 8.5 mm, 6 m long", SectionSizes.Find("IPE 200").OfLength(Mm(6000)).Description),
        static () => Assert.Equal("channel 200 x 75 x 8.5 x 11.5 mm, 6 m long", SectionSizes.Find("UPN 200").OfLength(Mm(6000)).Description),
        static () => Assert.Equal("angle 50 x 50 x 5 mm, 6 m long", SectionSizes.Find("L 50x50x5").OfLength(Mm(6000)).Description),
        static () => Assert.Equal("hollow section 100 x 100 x 8 mm outside, corners 20 mm, 6 m long", SectionSizes.Find("SHS 100x100x8 cold").OfLength(Mm(6000)).Description),
        static () => Assert.Equal("hollow section 88.9 mm in diameter outside, 6 m long", CircularHollowSection.FromOutside(Mm(88.9), Mm(6000)).Description));

    [Fact]
    public void Wrong_I_sections() => Assert.Multiple(
        static () => Errors.Refused(static () => I(300, 150, 150, 10, 0), "webThickness", "150 mm is outside", "more than 0 and less than 150 mm"),
        static () => Errors.Refused(static () => I(300, 150, 0, 10, 0), "webThickness", "0 mm is outside"),
        static () => Errors.Refused(static () => I(300, 150, 7, 150, 0), "flangeThickness", "150 mm is outside", "less than 150 mm"),
        static () => Errors.Refused(static () => I(300, 150, 10, 10, 70.1), "rootRadius", "70.1 mm is outside", "at most 70 mm"),
        static () => Errors.Refused(static () => I(100, 150, 10, 10, 41), "rootRadius", "41 mm is outside", "at most 40 mm"),
        static () => Errors.Refused(static () => I(300, 150, 10, 10, -1), "rootRadius", "-1 mm is outside"),
        static () => Errors.Refused(static () => I(0, 150, 10, 10, 0), "height", "0 mm is outside"),
        static () => Errors.Refused(static () => SectionSizes.Find("IPE 100").OfLength(Mm(0)), "length", "0 mm is outside"));

    [Fact]
    public void Wrong_channels() => Assert.Multiple(
        static () => Errors.Refused(static () => Parallel(200, 80, 80, 11, 0), "webThickness", "80 mm is outside"),
        static () => Errors.Refused(static () => Parallel(200, 80, 6, 11, 75), "rootRadius", "75 mm is outside", "at most 74 mm"),
        static () => Errors.Refused(static () => Tapered(200, 80, 6, 11, 13, 0, 45), "taper", "45 deg is outside"),
        static () => Errors.Refused(static () => Tapered(200, 80, 6, 11, 13, 0, 16), "taper", "16 deg is outside", "less than 15.376251 deg", "thickness at the toe"),
        static () => Errors.Refused(static () => Tapered(60, 100, 4, 26, 0, 0, 7), "taper", "7 deg is outside", "less than 4.969741 deg", "leave some web"),
        static () => Errors.Refused(static () => Tapered(200, 80, 6, 11, 13, 13, 5), "toeRadius", "13 mm is outside"),
        static () => Errors.Refused(static () => Tapered(200, 80, 6, 11, 13, -1, 5), "toeRadius", "-1 mm is outside"));

    [Fact]
    public void Wrong_angles() => Assert.Multiple(
        static () => Errors.Refused(static () => L(75, 150, 9, 12, 6), "shortLeg", "150 mm is outside", "at most 75 mm"),
        static () => Errors.Refused(static () => L(100, 60, 60, 0, 0), "thickness", "60 mm is outside", "less than 60 mm"),
        static () => Errors.Refused(static () => L(100, 60, 8, 12, 9), "toeRadius", "9 mm is outside", "at most 8 mm"),
        static () => Errors.Refused(static () => L(100, 60, 8, 47, 6), "rootRadius", "47 mm is outside", "at most 46 mm"));

    [Fact]
    public void Wrong_tees_and_hollow_sections() => Assert.Multiple(
        static () => Errors.Refused(static () => new TeeSection(Mm(100), Mm(50), Mm(50), Mm(5), Mm(0), Mm(1000)), "stemThickness", "50 mm is outside"),
        static () => Errors.Refused(static () => new TeeSection(Mm(100), Mm(50), Mm(5), Mm(100), Mm(0), Mm(1000)), "flangeThickness", "100 mm is outside"),
        static () => Errors.Refused(static () => new TeeSection(Mm(100), Mm(50), Mm(5), Mm(5), Mm(23), Mm(1000)), "rootRadius", "23 mm is outside", "at most 22.5 mm"),
        static () => Errors.Refused(static () => Box(200, 100, 5, 50.1), "outsideCornerRadius", "50.1 mm is outside", "at most 50 mm"),
        static () => Errors.Refused(static () => Box(200, 100, 50, 10), "wallThickness", "50 mm is outside", "less than 50 mm"),
        static () => Errors.Refused(static () => RectangularHollowSection.ColdFormed(Mm(50), Mm(50), Mm(12), Mm(1000)), "wallThickness", "12 mm is outside"),
        static () => Errors.Refused(static () => RectangularHollowSection.FromInside(Mm(50), Mm(50), Mm(0), Mm(0), Mm(1000)), "wallThickness", "0 mm is outside"),
        static () => Errors.Refused(static () => RectangularHollowSection.FromInside(Mm(50), Mm(50), Mm(5), Mm(26), Mm(1000)), "insideCornerRadius", "26 mm is outside"),
        static () => Errors.Refused(static () => CircularHollowSection.FromOutside(Mm(0), Mm(1000)), "outsideDiameter", "0 mm is outside"),
        static () => Errors.Refused(static () => CircularHollowSection.FromInside(Mm(100), Mm(0), Mm(1000)), "wallThickness", "0 mm is outside"));

    private static ISection I(double h, double b, double web, double flange, double root) => new(Mm(h), Mm(b), Mm(web), Mm(flange), Mm(root), Mm(1000));

    private static Channel Parallel(double h, double b, double web, double flange, double root) =>
        Channel.WithParallelFlanges(Mm(h), Mm(b), Mm(web), Mm(flange), Mm(root), Mm(1000));

    private static Channel Tapered(double h, double b, double web, double flange, double root, double toe, double degrees) =>
        Channel.WithTaperedFlanges(Mm(h), Mm(b), Mm(web), Mm(flange), Mm(root), Mm(toe), Angle.FromDegrees(degrees), Mm(1000));

    private static AngleSection L(double a, double b, double t, double root, double toe) => new(Mm(a), Mm(b), Mm(t), Mm(root), Mm(toe), Mm(1000));

    private static RectangularHollowSection Box(double h, double b, double wall, double corner) =>
        RectangularHollowSection.FromOutside(Mm(h), Mm(b), Mm(wall), Mm(corner), Mm(1000));
}
