using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

public sealed class Heads
{
    // Depth over radius, from a nearly flat dish to a long nose, and close to the sphere on both sides.
    public static TheoryData<double> Depths => [0.003, 0.03, 0.3, 0.5, 0.9, 0.999, 0.9999999, 1, 1.0000001, 1.001, 1.5, 3, 30, 300];

    // Crown and knuckle radius over diameter.
    public static TheoryData<double, double> Radii
    {
        get
        {
            var data = new TheoryData<double, double>();
            foreach (double crown in new[] { 0.5, 0.501, 0.6, 0.8, 1, 2, 10, 100 })
            {
                foreach (double knuckle in new[] { 0, 0.001, 0.06, 0.1, 0.154, 0.3, 0.49, 0.499999, 0.5 })
                {
                    data.Add(crown, knuckle);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Depths))]
    public void An_ellipsoid_is_its_profile_turned_round_its_axis(double depth)
    {
        // Circle times piece of profile, by a rule that does not mind sharp integrands.
        double area = 2 * Math.PI * 1e6 * SurfaceOfRevolution.Integral(t =>
        {
            (double sine, double cosine) = Math.SinCos(t * Math.PI / 2);
            return Math.PI / 2 * sine * double.Hypot(cosine, depth * sine);
        });
        Near.Equal(area, Dish(EllipsoidalHead.FromOutside(Mm(2000), Mm(1000 * depth), Mm(0))), 2e-12, "area");
    }

    [Theory]
    [MemberData(nameof(Depths))]
    public void The_outside_of_an_inner_ellipsoid_lies_one_thickness_off_it_everywhere(double depth)
    {
        foreach (double thickness in new[] { 1.0, 20, 300 })
        {
            // Points of the ellipsoid, pushed out along its normal, in the parameter that spaces them by the slope.
            double a = 1000;
            double h = 1000 * depth;
            (double Radius, double Height) Point(double t)
            {
                double slope = t * Math.PI / 2;
                (double sine, double cosine) = Math.SinCos(slope);
                double support = double.Hypot(a * sine, h * cosine);
                return (sine * ((a * a / support) + thickness), cosine * ((h * h / support) + thickness));
            }

            double turned = SurfaceOfRevolution.Area(t => Point(t).Radius, t => Point(t).Height, depth is < 0.1 or > 10 ? 65_536 : 4096);
            var head = EllipsoidalHead.FromInside(Mm(2000), Mm(h), Mm(thickness), Mm(0));
            Near.Equal(turned, Dish(head), 1e-8, "area");
            Near.Equal(Point(1).Radius * 2, head.OutsideDiameter.Millimeters, 1e-12);
            Near.Equal(Point(0).Height, head.Depth.Millimeters, 1e-12);
        }
    }

    [Theory]
    [MemberData(nameof(Radii))]
    public void A_torisphere_is_its_two_arcs_turned_round_its_axis(double crown, double knuckle)
    {
        var head = TorisphericalHead.FromOutside(Mm(2000), Mm(2000 * crown), Mm(2000 * knuckle), Mm(0));
        double circle = 1000 - (2000 * knuckle);
        double edge = knuckle == 0.5 ? 0 : Math.Asin(Math.Min(1, circle / (2000 * (crown - knuckle))));
        double area = SurfaceOfRevolution.Area(
            t => 2000 * crown * Math.Sin(t * edge), t => 2000 * crown * Math.Cos(t * edge));
        double Angle(double t) => edge + (t * ((Math.PI / 2) - edge));
        area += SurfaceOfRevolution.Area(
            t => circle + (2000 * knuckle * Math.Sin(Angle(t))), t => 2000 * knuckle * Math.Cos(Angle(t)));

        // The arcsine of nearly 1 has lost half its digits, in the check and not in the library.
        Near.Equal(area, Dish(head), crown < 0.502 ? 1e-7 : 1e-10, "area");
        double depth = (2000 * crown) - (2000 * (crown - knuckle) * Math.Cos(edge));
        Near.Equal(knuckle == 0.5 ? 1000 : depth, head.Depth.Millimeters, crown < 0.502 ? 1e-7 : 1e-10, "depth");
    }

    [Fact]
    public void A_sphere_by_every_way()
    {
        double sphere = 2 * Math.PI;
        Near.Equal(sphere, HemisphericalHead.FromOutside(Mm(2000), Mm(0)).Area.SquareMeters, 1e-15);
        Near.Equal(sphere, HemisphericalHead.FromInside(Mm(1980), Mm(10), Mm(0)).Area.SquareMeters, 1e-15);
        Near.Equal(sphere, EllipsoidalHead.FromOutside(Mm(2000), Mm(1000), Mm(0)).Area.SquareMeters, 1e-15);
        Near.Equal(sphere, EllipsoidalHead.FromInside(Mm(1980), Mm(990), Mm(10), Mm(0)).Area.SquareMeters, 1e-14);
        Near.Equal(sphere, TorisphericalHead.FromOutside(Mm(2000), Mm(1000), Mm(1000), Mm(0)).Area.SquareMeters, 1e-15);
        Near.Equal(sphere, TorisphericalHead.FromOutside(Mm(2000), Mm(1000), Mm(100), Mm(0)).Area.SquareMeters, 1e-14);
        Near.Equal(sphere, TorisphericalHead.FromOutside(Mm(2000), Mm(5000), Mm(1000), Mm(0)).Area.SquareMeters, 1e-15);
        Near.Equal(sphere, TorisphericalHead.FromInside(Mm(1980), Mm(990), Mm(990), Mm(10), Mm(0)).Area.SquareMeters, 1e-15);
    }

    [Fact]
    public void A_nearly_flat_dish_is_nearly_a_disc()
    {
        double disc = FlatHead.FromOutside(Mm(2000), Mm(0)).Area.SquareMeters;
        Near.Equal(Math.PI, disc, 1e-15);
        Near.Equal(disc, EllipsoidalHead.FromOutside(Mm(2000), Mm(1), Mm(0)).Area.SquareMeters, 1e-5);
        Near.Equal(disc, ConicalHead.FromOutside(Mm(2000), Mm(1), Mm(0)).Area.SquareMeters, 1e-6);
        Near.Equal(disc, TorisphericalHead.FromOutside(Mm(2000), Mm(1e6), Mm(0), Mm(0)).Area.SquareMeters, 1e-6);
    }

    [Fact]
    public void Inside_dimensions_give_the_larger_outside()
    {
        // The same numbers on the inside and on the outside are two different heads.
        Length d = Mm(2000);
        Assert.True(HemisphericalHead.FromInside(d, Mm(10), Mm(40)).Area > HemisphericalHead.FromOutside(d, Mm(40)).Area);
        Assert.True(EllipsoidalHead.TwoToOneFromInside(d, Mm(10), Mm(40)).Area > EllipsoidalHead.TwoToOneFromOutside(d, Mm(40)).Area);
        Assert.True(
            TorisphericalHead.FromInside(d, d, Mm(200), Mm(10), Mm(40)).Area > TorisphericalHead.FromOutside(d, d, Mm(200), Mm(40)).Area);
        Assert.Equal(2020, TorisphericalHead.FromInside(d, d, Mm(200), Mm(10), Mm(40)).OutsideDiameter.Millimeters);
        Assert.Equal(2010, TorisphericalHead.FromInside(d, d, Mm(200), Mm(10), Mm(40)).OutsideCrownRadius.Millimeters);
        Assert.Equal(210, TorisphericalHead.FromInside(d, d, Mm(200), Mm(10), Mm(40)).OutsideKnuckleRadius.Millimeters);
    }

    [Fact]
    public void A_parallel_face_stated_either_way_is_one_head() => Assert.Equal(
        TorisphericalHead.FromOutside(Mm(2000), Mm(2010), Mm(210), Mm(40)),
        TorisphericalHead.FromInside(Mm(1980), Mm(2000), Mm(200), Mm(10), Mm(40)));

    [Fact]
    public void Standard_forms_carry_their_mark()
    {
        var kloepper = TorisphericalHead.Kloepper(Mm(2000), Mm(10), Mm(35));
        var korbbogen = TorisphericalHead.Korbbogen(Mm(2000), Mm(10), Mm(30));
        Near.Equal(TorisphericalHead.FromOutside(Mm(2000), Mm(2010), Mm(210), Mm(35)).Area.SquareMeters, kloepper.Area.SquareMeters, 1e-15);
        Near.Equal(TorisphericalHead.FromOutside(Mm(2000), Mm(1610), Mm(318), Mm(30)).Area.SquareMeters, korbbogen.Area.SquareMeters, 1e-15);
        Assert.Equal(BasisKind.Recalled, kloepper.FormBasis!.Kind);
        Assert.Contains("DIN 28013, form and depth (recalled, check before use)", korbbogen.ShowWorkings().ToString(), StringComparison.Ordinal);
        Assert.Null(TorisphericalHead.FromOutside(Mm(2000), Mm(2010), Mm(210), Mm(35)).FormBasis);
    }

    [Fact]
    public void The_straight_flange_belongs_to_the_head()
    {
        var head = EllipsoidalHead.TwoToOneFromOutside(Mm(1000), Mm(50));
        Near.Equal(head.Area.SquareMeters, head.DishArea.SquareMeters + Pipe(1000, 50).Area.SquareMeters, 1e-15);
        Assert.Equal(250, head.Depth.Millimeters);
        Near.Equal(Math.PI * 0.05, FlatHead.FromOutside(Mm(1000), Mm(50)).Area.SquareMeters - (Math.PI / 4), 1e-14);
    }

    [Fact]
    public void Twice_the_size_has_four_times_the_area()
    {
        Func<double, Head>[] heads =
        [
            static k => HemisphericalHead.FromInside(Mm(k * 600), Mm(k * 8), Mm(k * 25)),
            static k => EllipsoidalHead.FromInside(Mm(k * 600), Mm(k * 170), Mm(k * 8), Mm(k * 25)),
            static k => EllipsoidalHead.FromInside(Mm(k * 600), Mm(k * 470), Mm(k * 8), Mm(k * 25)),
            static k => TorisphericalHead.FromInside(Mm(k * 600), Mm(k * 500), Mm(k * 60), Mm(k * 8), Mm(k * 25)),
            static k => TorisphericalHead.Korbbogen(Mm(k * 600), Mm(k * 8), Mm(k * 25)),
            static k => ConicalHead.FromOutside(Mm(k * 600), Mm(k * 200), Mm(k * 25)),
            static k => FlatHead.FromOutside(Mm(k * 600), Mm(k * 25)),
            static k => Cap.FromOutside(Mm(k * 600), Mm(k * 267)),
        ];
        Assert.All(heads, static make => Near.Equal(4 * make(1).Area.SquareMeters, make(2).Area.SquareMeters, 1e-13));
    }

    [Fact]
    public void Deeper_heads_have_more_area()
    {
        double[] ellipsoids = [.. new[] { 0.01, 0.2, 0.4, 0.9, 0.999999, 1, 1.000001, 1.1, 4 }.Select(static depth => EllipsoidalHead.FromOutside(Mm(1000), Mm(500 * depth), Mm(0)).Area.SquareMeters)];
        Assert.Equal(ellipsoids.Order(), ellipsoids);
        double[] knuckles = [.. new[] { 0, 0.01, 0.06, 0.1, 0.2, 0.4, 0.5 }.Select(static share => TorisphericalHead.FromOutside(Mm(1000), Mm(1000), Mm(1000 * share), Mm(0)).Area.SquareMeters)];
        Assert.Equal(knuckles.Order(), knuckles);
        double[] crowns = [.. new[] { 100, 3, 1, 0.8, 0.6, 0.5 }.Select(static share => TorisphericalHead.FromOutside(Mm(1000), Mm(1000 * share), Mm(60), Mm(0)).Area.SquareMeters)];
        Assert.Equal(crowns.Order(), crowns);
    }

    [Fact]
    public void A_cap_is_a_two_to_one_head()
    {
        var cap = Cap.FromSize(PipeSize.FromNps("6"));
        Assert.Equal(168.3, cap.OutsideDiameter.Millimeters);
        Near.Equal(89, cap.Depth.Millimeters + cap.StraightFlange.Millimeters, 1e-15);
        Near.Equal(EllipsoidalHead.TwoToOneFromOutside(Mm(168.3), Mm(89 - (168.3 / 4))).Area.SquareMeters, cap.Area.SquareMeters, 1e-15);
        Assert.Equal(BasisKind.Recalled, cap.FormBasis!.Kind);
        Assert.Null(Cap.FromOutside(Mm(168.3), Mm(89)).FormBasis);
    }

    [Fact]
    public void Wrong_dimensions() => Assert.Multiple(
        static () => Errors.Refused(static () => TorisphericalHead.FromOutside(Mm(1000), Mm(1000), Mm(501), Mm(0)), "outsideKnuckleRadius", "501 mm is outside", "at least 0 and at most 500 mm"),
        static () => Errors.Refused(static () => TorisphericalHead.FromOutside(Mm(1000), Mm(60), Mm(100), Mm(0)), "outsideCrownRadius", "60 mm is outside", "at least 500 "),
        static () => Errors.Refused(static () => TorisphericalHead.FromInside(Mm(1000), Mm(499), Mm(100), Mm(10), Mm(0)), "insideCrownRadius", "499 mm is outside"),
        static () => Errors.Refused(static () => TorisphericalHead.FromInside(Mm(1000), Mm(1000), Mm(-1), Mm(10), Mm(0)), "insideKnuckleRadius", "-1 mm is outside"),
        static () => Errors.Refused(static () => TorisphericalHead.FromInside(Mm(1000), Mm(1000), Mm(100), Mm(0), Mm(0)), "thickness", "0 mm is outside", "more than 0"),
        static () => Errors.Refused(static () => TorisphericalHead.Kloepper(Mm(100), Mm(41), Mm(0)), "thickness", "41 mm is outside", "at most 40 mm"),
        static () => Errors.Refused(static () => TorisphericalHead.Korbbogen(Mm(100), Mm(41), Mm(0)), "thickness", "at most 34.6 mm"),
        static () => Errors.Refused(static () => EllipsoidalHead.FromOutside(Mm(1000), Mm(0), Mm(0)), "outsideDepth", "0 mm is outside"),
        static () => Errors.Refused(static () => EllipsoidalHead.TwoToOneFromInside(Mm(2), Mm(1), Mm(0)), "insideDiameter", "2 mm is outside", "at least 4 "),
        static () => Errors.Refused(static () => HemisphericalHead.FromOutside(Mm(1000), Mm(-1)), "straightFlange", "-1 mm is outside"),
        static () => Errors.Refused(static () => ConicalHead.FromOutside(Mm(0.5), Mm(100), Mm(0)), "outsideDiameter", "0.5 mm is outside"),
        static () => Errors.Refused(static () => Cap.FromOutside(Mm(100), Mm(24)), "overallLength", "24 mm is outside", "at least 25 "));

    private static double Dish(Head head) => head.DishArea.SquareMeters * 1e6;
}
