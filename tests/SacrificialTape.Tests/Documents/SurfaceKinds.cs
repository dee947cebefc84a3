using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>A surface of every kind, in every way it can be stated, with numbers that no decimal grid helps.</summary>
internal static class SurfaceKinds
{
    internal static IReadOnlyList<Func<Random, Surface>> All { get; } =
    [
        Pipe,
        static random => Interrupted(random, placed: false),
        static random => Interrupted(random, placed: true),
        static random => Bend(random),
        static random => new MitredBend(Some(random, 100, 400), Some(random, 500, 900), Angle.FromDegrees(45 + (45 * random.NextDouble())), 1 + random.Next(4)),
        Reducer,
        static _ => new ConcentricReducer(PipeSize.FromNps("8"), PipeSize.FromNps("6")),
        static random => new EccentricReducer(Some(random, 200, 300), Some(random, 100, 200), Some(random, 100, 300)),
        static _ => new EccentricReducer(PipeSize.FromNps("8"), PipeSize.FromNps("6")),
        static random => new Tee(Some(random, 200, 300), Some(random, 100, 200), Some(random, 200, 300), Some(random, 200, 300)),
        static _ => new Tee(PipeSize.FromNps("6"), PipeSize.FromNps("6")),
        static random => new Flange(Some(random, 400, 500), Some(random, 10, 30), Some(random, 150, 200), Some(random, 200, 250), 8, Some(random, 10, 30), FlangeParts.Rim | FlangeParts.Front),
        static random => new Flange(FlangeSize.Class150(PipeSize.FromNps("6")), Some(random, 170, 190), FlangeParts.Rim | FlangeParts.Back),
        static random => FlatHead.FromOutside(Some(random, 400, 900), Some(random, 0, 60)),
        static random => ConicalHead.FromOutside(Some(random, 400, 900), Some(random, 100, 300), Some(random, 0, 60)),
        static random => EllipsoidalHead.FromOutside(Some(random, 400, 900), Some(random, 100, 200), Some(random, 0, 60)),
        static random => EllipsoidalHead.TwoToOneFromInside(Some(random, 400, 900), Some(random, 3, 12), Some(random, 0, 60)),
        static random => HemisphericalHead.FromInside(Some(random, 400, 900), Some(random, 3, 12), Some(random, 0, 60)),
        static random => TorisphericalHead.FromInside(Some(random, 400, 500), Some(random, 400, 500), Some(random, 40, 60), Some(random, 3, 12), Some(random, 0, 60)),
        static random => TorisphericalHead.Kloepper(Some(random, 400, 900), Some(random, 3, 12), Some(random, 0, 60)),
        static random => TorisphericalHead.Korbbogen(Some(random, 400, 900), Some(random, 3, 12), Some(random, 0, 60)),
        static random => Cap.FromOutside(Some(random, 100, 300), Some(random, 80, 200)),
        static _ => Cap.FromSize(PipeSize.FromNps("6")),
        static random => Panel(random),
        static random => new CircularPanel(Some(random, 600, 900), [PanelOpening.Circular(Some(random, 50, 80)).At(Some(random, -60, 60), Some(random, -60, 60))]),
        static random => new AnnularPanel(Some(random, 800, 900), Some(random, 100, 200), [PanelOpening.Circular(Some(random, 20, 40), 3)]),
        static random => new CorrugatedPanel(Some(random, 200, 250), Some(random, 60, 80), Some(random, 60, 80), Some(random, 30, 40), 4, Some(random, 2000, 3000), Some(random, 0, 50)),
        static random => new Shell(Some(random, 900, 2000), Some(random, 2000, 4000), ShellAxis.Lying, [ShellOpening.Round(Some(random, 100, 200), 2), ShellOpening.Rectangular(Some(random, 100, 200), Some(random, 100, 200))]),
        static random => new TaperedColumn(Some(random, 200, 300), Some(random, 100, 200), Some(random, 2000, 5000), new BasePlate(Some(random, 500, 600), Some(random, 500, 600), Some(random, 10, 30), 4, Some(random, 10, 20))),
        static random => new TaperedColumn(Some(random, 200, 300), Some(random, 100, 200), Some(random, 2000, 5000)),
        static random => new MeasuredArea(Area.FromSquareMeters(1 + random.NextDouble()), AreaAllowance.FromFraction(random.NextDouble() / 2), "by a net of string"),
        static random => new SheetEdge(Some(random, 2000, 3000), Some(random, 2, 6), Some(random, 15, 20), Some(random, 15, 20), 4, 1),
        static random => WindowOpening.Circular(Some(random, 400, 600), Some(random, 2, 6), Some(random, 15, 20), Some(random, 15, 20)),
        static random => WindowOpening.Rectangular(Some(random, 400, 600), Some(random, 400, 600), Some(random, 2, 6), Some(random, 15, 20), Some(random, 15, 20)),
        static random => new Washer(Some(random, 40, 60), Some(random, 15, 25), 12),
        static random => new PipeStrap(Some(random, 150, 200), Some(random, 40, 60), Some(random, 3, 6), Angle.FromDegrees(180 + random.NextDouble()), Some(random, 20, 60), StrapFaces.Both),
        .. Enumerable.Range(0, 5).Select(static kind => (Func<Random, Surface>)(random => Section(random, kind))),
        static random => CircularHollowSection.FromInside(Some(random, 100, 200), Some(random, 3, 8), Some(random, 1000, 9000)),
        static random => RectangularHollowSection.FromInside(Some(random, 90, 200), Some(random, 90, 200), Some(random, 3, 8), Some(random, 3, 8), Some(random, 1000, 9000)),
        static random => RectangularHollowSection.ColdFormed(Some(random, 90, 200), Some(random, 90, 200), Some(random, 3, 8), Some(random, 1000, 9000)),
        static random => RectangularHollowSection.HotFinished(Some(random, 90, 200), Some(random, 90, 200), Some(random, 3, 8), Some(random, 1000, 9000)),
        static random => SectionSizes.All[random.Next(SectionSizes.All.Count)].OfLength(Some(random, 1000, 9000)),
    ];

    /// <summary>A length with as many digits as a double has.</summary>
    internal static Length Some(Random random, double low, double high) => Mm(low + ((high - low) * random.NextDouble()));

    internal static StraightPipe Pipe(Random random) => new(Some(random, 60, 600), Some(random, 2000, 20_000));

    internal static Bend Bend(Random random) => new(Some(random, 200, 300), Some(random, 400, 900), Angle.FromDegrees(30 + (60 * random.NextDouble())));

    internal static ConcentricReducer Reducer(Random random) => new(Some(random, 200, 300), Some(random, 100, 200), Some(random, 100, 300));

    internal static RectangularPanel Panel(Random random) => new(
        Some(random, 1500, 2500), Some(random, 1000, 2000),
        [PanelOpening.Rectangular(Some(random, 50, 100), Some(random, 50, 100)).At(Some(random, -300, 300), Some(random, -300, 300)), PanelOpening.Circular(Some(random, 10, 20), 2)]);

    internal static InterruptedPipe Interrupted(Random random, bool placed)
    {
        StayClear band = StayClear.Band(StayClearKind.FlangedJoint, Some(random, 40, 90), placed ? 1 : 3, Some(random, 5, 20));
        return new InterruptedPipe(
            new StraightPipe(Some(random, 60, 600), Some(random, 6000, 12_000)),
            placed ? [band.At(Some(random, 1000, 2000)), StayClear.Band(StayClearKind.IsolatingJoint, Mm(30), margin: Mm(60)).At(Some(random, 3000, 4000))] : [band]);
    }

    internal static Section Section(Random random, int kind) => SectionCases.Make(
        kind, 150 + (300 * random.NextDouble()), 100 + (100 * random.NextDouble()), random.NextDouble(), random.NextDouble(), 1000 + (5000 * random.NextDouble())).Section;
}
