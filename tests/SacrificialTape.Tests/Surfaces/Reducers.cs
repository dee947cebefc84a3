using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

public sealed class Reducers
{
    // Large end over small end, length over large end: a log grid.
    public static TheoryData<double, double> Shapes
    {
        get
        {
            var data = new TheoryData<double, double>();
            foreach (double ratio in new[] { 1, 1.001, 1.3, 2, 5, 100 })
            {
                foreach (double slender in new[] { 0.001, 0.03, 0.3, 1, 10, 1000 })
                {
                    data.Add(ratio, slender);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_concentric_reducer_is_its_profile_turned_round_its_axis(double ratio, double slender)
    {
        double pappus = SurfaceOfRevolution.Area(t => 500 + (t * ((500 / ratio) - 500)), t => t * 1000 * slender);
        Near.Equal(pappus, Concentric(1000, 1000 / ratio, 1000 * slender) * 1e6, 1e-10);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void An_eccentric_reducer_is_the_limit_of_flat_facets(double ratio, double slender)
    {
        double facets = ObliqueFacets.Limit(500, 500 / ratio, 500 - (500 / ratio), 1000 * slender, out double error);
        double area = Eccentric(1000, 1000 / ratio, 1000 * slender) * 1e6;
        Near.Equal(facets, area, 1e-7 + (4 * error), "area");

        // A stretched quadrature of its own: tanh-sinh does not care where the integrand is sharp.
        double difference = 500 - (500 / ratio);
        double mean = SurfaceOfRevolution.Integral(t => double.Hypot(1000 * slender, difference * (1 + Math.Cos(Math.PI * t))));
        Near.Equal(Math.PI * (500 + (500 / ratio)) * mean, area, 1e-12, "area");
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void An_eccentric_reducer_has_a_little_more_area_and_less_than_its_longest_side_would_give(double ratio, double slender)
    {
        double concentric = Concentric(1000, 1000 / ratio, 1000 * slender);
        double eccentric = Eccentric(1000, 1000 / ratio, 1000 * slender);
        var reducer = new EccentricReducer(Mm(1000), Mm(1000 / ratio), Mm(1000 * slender));
        double most = Math.PI * (500 + (500 / ratio)) * reducer.SlopingSide.Millimeters / 1e6;
        Assert.InRange(eccentric, concentric * (1 - 1e-12), most * (1 + 1e-12));
        if (ratio > 1.2 && slender < 10)
        {
            Assert.True(eccentric > concentric);
        }
    }

    [Fact]
    public void Equal_ends_make_a_pipe()
    {
        double pipe = Pipe(219.1, 178).Area.SquareMeters;
        Near.Equal(pipe, Concentric(219.1, 219.1, 178), 1e-14);
        Near.Equal(pipe, Eccentric(219.1, 219.1, 178), 1e-14);
    }

    [Fact]
    public void Twice_the_size_has_four_times_the_area()
    {
        Near.Equal(4 * Concentric(168.3, 114.3, 140), Concentric(336.6, 228.6, 280), 1e-14);
        Near.Equal(4 * Eccentric(168.3, 114.3, 140), Eccentric(336.6, 228.6, 280), 1e-13);
    }

    [Fact]
    public void Units_do_not_matter()
    {
        var metres = new EccentricReducer(Length.FromMeters(0.3), Length.FromCentimeters(20), Length.FromInches(8));
        var millimetres = new EccentricReducer(Mm(300), Mm(200), Mm(203.2));
        Assert.Equal(millimetres, metres);
        Near.Equal(millimetres.Area.SquareMeters, metres.Area.SquareMeters, 1e-14);
    }

    [Fact]
    public void Each_dimension_adds_area()
    {
        Assert.True(Concentric(200, 100, 151) > Concentric(200, 100, 150));
        Assert.True(Concentric(201, 100, 150) > Concentric(200, 100, 150));
        Assert.True(Eccentric(200, 100, 151) > Eccentric(200, 100, 150));
        Assert.True(Eccentric(201, 100, 150) > Eccentric(200, 100, 150));
    }

    [Fact]
    public void By_size_the_length_carries_its_mark()
    {
        var reducer = new ConcentricReducer(PipeSize.FromNps("6"), PipeSize.FromNps("4"));
        Assert.Equal(140, reducer.Length.Millimeters);
        Assert.Equal(FittingSizes.ReducerBasis, reducer.LengthBasis);
        Assert.Equal(BasisKind.Recalled, FittingSizes.ReducerBasis.Kind);
        Assert.Contains("recalled, check before use", reducer.ShowWorkings().ToString(), StringComparison.Ordinal);
        Assert.Null(new ConcentricReducer(Mm(168.3), Mm(114.3), Mm(140)).LengthBasis);
        Assert.Equal(140, new EccentricReducer(PipeSize.FromNps("6"), PipeSize.FromNps("4")).StraightSide.Millimeters);
    }

    [Fact]
    public void Sides_by_hand()
    {
        // 3-4-5 triangles: half the difference for the slant, the whole of it for the sloping side.
        Near.Equal(50, new ConcentricReducer(Mm(100), Mm(40), Mm(40)).Slant.Millimeters, 1e-15);
        Near.Equal(50, new EccentricReducer(Mm(70), Mm(40), Mm(40)).SlopingSide.Millimeters, 1e-15);
    }

    [Fact]
    public void Wrong_dimensions() => Assert.Multiple(
        static () => Errors.Refused(static () => new ConcentricReducer(Mm(100), Mm(150), Mm(90)), "smallEnd", "150 mm is outside", "at least 1 and at most 100 mm"),
        static () => Errors.Refused(static () => new EccentricReducer(Mm(100), Mm(150), Mm(90)), "smallEnd", "150 mm is outside"),
        static () => Errors.Refused(static () => new ConcentricReducer(Mm(0.1), Mm(0.05), Mm(90)), "largeEnd", "0.1 mm is outside"),
        static () => Errors.Refused(static () => new EccentricReducer(Mm(100), Mm(50), Mm(0)), "length", "0 mm is outside"),
        static () => Errors.Refused(static () => new EccentricReducer(PipeSize.FromNps("4"), PipeSize.FromNps("6")), "smallEnd", "168.3 mm is outside"));

    [Fact]
    public void Sizes_that_are_not_known() => Assert.Multiple(
        static () => Said("NPS 5 is not known here; known are NPS 1, 2, 3", static () => new ConcentricReducer(PipeSize.FromNps("5"), PipeSize.FromNps("4"))),
        static () => Said("not NPS 6 (DN 150), ISO 4200 series 1", static () => FittingSizes.ReducerLength(PipeSize.FromDn(150, PipeStandard.Iso4200Series1))),
        static () => Said("4 x 2 1/2 is not known here; known are 2 x 1", static () => new Tee(PipeSize.FromNps("4"), PipeSize.FromNps("2 1/2"))),
        static () => Said("length of a cap of NPS 48", static () => FittingSizes.CapLength(PipeSize.FromNps("48"))));

    private static void Said(string text, Func<object?> make) =>
        Assert.Contains(text, Assert.Throws<ArgumentException>(make).Message, StringComparison.Ordinal);

    private static double Concentric(double large, double small, double length) =>
        new ConcentricReducer(Mm(large), Mm(small), Mm(length)).Area.SquareMeters;

    private static double Eccentric(double large, double small, double length) =>
        new EccentricReducer(Mm(large), Mm(small), Mm(length)).Area.SquareMeters;
}
