using static SacrificialTape.Tests.Documents.SurfaceKinds;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>A lay of every kind, in every way it can be stated.</summary>
internal static class LayKinds
{
    internal static IReadOnlyList<Func<Random, StripStock, ILay>> All { get; } =
    [
        static (random, stock) => Spiral(random, Pipe(random), stock),
        static (random, stock) => new SpiralLay(Pipe(random), stock, SpiralSetting.FromLapBetweenMarks(Some(random, 5, 20)), SpiralEnds.LevelTurns(2), Any(random)),
        static (random, stock) => new SpiralLay(Pipe(random), stock, SpiralSetting.FromLapAlongPipe(Some(random, 5, 10)), choices: Any(random)),
        static (random, stock) => new SpiralLay(Pipe(random), stock, SpiralSetting.FromAdvance(Some(random, 30, 45)), choices: Any(random)),
        static (random, stock) => Pair(random, stock),
        static (random, stock) => new RingLay(Pipe(random), stock, Lap(random), Any(random)),
        static (random, stock) => new AlongPipeLay(Pipe(random), stock, Lap(random), Any(random)),
        static (random, stock) => InterruptedLay.Of(Interrupted(random, placed: false), new OneLay(random, stock).On),
        static (random, stock) => InterruptedLay.Of(Interrupted(random, placed: true), new OneLay(random, stock).On),
        static (random, stock) => new BendRingLay(Bend(random), stock, Lap(random), Any(random)),
        static (random, stock) => new BendSpiralLay(Bend(random), stock, Lap(random), Any(random)),
        static (random, stock) => new MitredBendLay(new MitredBend(Some(random, 100, 200), Some(random, 600, 900), Angle.FromDegrees(60), 2), stock, Lap(random), Some(random, 5, 20), Any(random)),
        static (random, stock) => new EccentricReducerLay(new EccentricReducer(Some(random, 250, 300), Some(random, 150, 200), Some(random, 100, 300)), stock, Lap(random), Any(random)),
        static (random, stock) => new TeeLay(new Tee(Some(random, 200, 300), Some(random, 100, 200), Some(random, 200, 300), Some(random, 200, 300)), stock, Lap(random), Some(random, 5, 20), Any(random)),
        static (random, stock) => new FlangeLay(new Flange(Some(random, 400, 500), Some(random, 10, 30), Some(random, 150, 200), Some(random, 200, 250), 8, Some(random, 10, 30), FlangeParts.Rim | FlangeParts.Back | FlangeParts.Front), stock, Lap(random), Any(random)),
        static (random, stock) => new GoreLay(EllipsoidalHead.FromOutside(Some(random, 600, 900), Some(random, 150, 200), Some(random, 0, 60)), stock, Lap(random), Any(random)),
        static (random, stock) => new LatitudeRingLay(TorisphericalHead.Kloepper(Some(random, 600, 900), Some(random, 3, 12), Some(random, 0, 60)), stock, Lap(random), Any(random)),
        static (random, stock) => new MeridianStripLay(Reducer(random), stock, Lap(random), choices: Any(random)),
        static (random, stock) => new MeridianStripLay(ConicalHead.FromOutside(Some(random, 900, 950), Some(random, 300, 400), Some(random, 0, 60)), stock, Lap(random), 1, Any(random)),
        static (random, stock) => new FlatHeadLay(FlatHead.FromOutside(Some(random, 400, 900), Some(random, 20, 60)), stock, Lap(random), Any(random)),
        static (random, stock) => new PanelLay(Panel(random), stock, PanelDirection.AlongHeight, Lap(random), Any(random)),
        static (random, stock) => new CorrugatedLay(new CorrugatedPanel(Mm(200), Mm(70), Mm(70), Some(random, 30, 40), 4, Some(random, 2000, 3000)), stock, CorrugatedDirection.AcrossFlutes, Lap(random), Any(random)),
        static (random, stock) => new ShellLay(new Shell(Some(random, 900, 2000), Some(random, 2000, 4000), ShellAxis.Upright), stock, ShellDirection.AlongAxis, Lap(random), Some(random, 0, 20), Any(random)),
        static (random, stock) => new SectionLay(new ISection(Some(random, 290, 310), Some(random, 150, 170), Some(random, 7, 8), Some(random, 10, 12), Some(random, 10, 15), Some(random, 1000, 9000)), stock, Lap(random), SectionPattern.FaceByFace, Some(random, 5, 10), Any(random)),
        static (random, stock) => new SectionLay(SectionSizes.Find("IPE 300").OfLength(Some(random, 1000, 9000)), stock, Lap(random), choices: Any(random)),
        static (random, stock) => new SectionRingLay(RectangularHollowSection.ColdFormed(Some(random, 90, 200), Some(random, 90, 200), Some(random, 3, 8), Some(random, 1000, 9000)), stock, Lap(random), Any(random)),
        static (random, stock) => new StrapLay(new PipeStrap(Some(random, 150, 200), Some(random, 30, 40), Some(random, 3, 6), Angle.FromDegrees(180), Some(random, 20, 60), StrapFaces.Both), stock, Lap(random), Any(random)),
        static (random, stock) => EdgeLay.OfSheet(new SheetEdge(Some(random, 2000, 3000), Some(random, 2, 6), Some(random, 15, 18), Some(random, 15, 18), 4), stock, choices: Any(random)),
        static (random, stock) => EdgeLay.OfSheet(new SheetEdge(Mm(2000), Some(random, 2, 6), Some(random, 15, 18), Some(random, 15, 18), 1), stock, [Mm(1234.5), Mm(765.5)], Any(random)),
        static (random, stock) => EdgeLay.OfOpening(WindowOpening.Rectangular(Some(random, 400, 600), Some(random, 400, 600), Some(random, 2, 6), Some(random, 15, 18), Some(random, 15, 18)), stock, Any(random)),
        static (random, stock) => new MeasuredAreaLay(new MeasuredArea(Area.FromSquareMeters(1 + random.NextDouble()), AreaAllowance.FromFraction(random.NextDouble() / 2), "by a net of string"), stock, Lap(random), Any(random)),
    ];

    internal static LayChoices Any(Random random) => new(
        Some(random, 10, 20), Some(random, 0, 3), 1 + random.Next(2), random.Next(2) == 0 ? ApplicationMethod.ByHand : ApplicationMethod.WrappingHead);

    internal static Length Lap(Random random) => Some(random, 5, 10);

    internal static SpiralLay Spiral(Random random, StraightPipe pipe, StripStock stock) => new(pipe, stock, SpiralSetting.FromTrueLap(Lap(random)), choices: Any(random));

    private static SpiralPairLay Pair(Random random, StripStock stock)
    {
        StraightPipe pipe = Pipe(random);
        return new SpiralPairLay(
            Spiral(random, pipe, stock), Spiral(random, pipe, new StripStock(stock.Tape, Some(random, 50, 60), stock.RollLength)), SpiralHand.Left, secondFromOtherEnd: true);
    }

    // The same choices on every span.
    private sealed record OneLay(Random Random, StripStock Stock)
    {
        private readonly LayChoices choices = Any(Random);

        internal ILay On(StraightPipe pipe) => new RingLay(pipe, this.Stock, Mm(7.25), this.choices);
    }
}
