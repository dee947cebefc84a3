using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Foil held against what it is bent round and folded over.</summary>
public sealed class FoilOnEdges
{
    [Theory]
    [InlineData(0.5, 50, false)]
    [InlineData(0.5, 49.9, true)]
    [InlineData(0.1, 10, false)]
    [InlineData(0.1, 9.9, true)]
    public void A_thin_pipe_takes_thin_foil(double foil, double diameter, bool found)
    {
        StripStock stock = Stock(5, 30, foil);
        ILay[] lays =
        [
            new RingLay(Pipe(diameter, 300), stock, Mm(1)),
            new AlongPipeLay(Pipe(diameter, 300), stock, Mm(1)),
            new BendRingLay(new Bend(Mm(diameter), Mm(5 * diameter), Angle.FromDegrees(90)), stock, Mm(1)),
            InterruptedLay.Of(new InterruptedPipe(Pipe(diameter, 3000), [StayClear.Band(StayClearKind.FlangedJoint, Mm(100))]), span => new RingLay(span, stock, Mm(1))),
        ];
        Assert.All(lays, lay =>
        {
            Finding[] said = [.. Said(lay).Where(static one => one.Rule.Id == RuleIds.MinimumWrapDiameter)];
            Assert.Equal(found ? 1 : 0, said.Length);
            Assert.All(said, one => Near.Equal(diameter / foil, one.Measured!.Value.Number, 1e-12));
        });
    }

    [Theory]
    [InlineData(0.1, 0.5, null)]
    [InlineData(0.1, 0.49, 4.9)]
    [InlineData(0.3, 1.49, 1.49 / 0.3)]
    [InlineData(0.3, 1.5, null)]
    [InlineData(0.1, 0, 0.0)]
    public void A_fold_over_a_sharp_edge_is_found(double foil, double radius, double? ratio)
    {
        Finding[] said = [.. Said(new Folded(new RingLay(Pipe(), Stock(100, 30, foil), Mm(20)), Mm(radius))).Where(static one => one.Rule.Id == RuleIds.MinimumFoldRadius)];
        Assert.Equal(ratio is null ? 0 : 1, said.Length);
        Assert.All(said, one => Near.Equal(ratio!.Value, one.Measured!.Value.Number, 1e-12));
    }

    private static ValueList<Finding> Said(ILay lay) => new Job(
        "j",
        [new SurveyLine("A", lay, ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(1)))],
        Make.TakeOff()).Estimate().Lines[0].Findings;

    private sealed class Folded(RingLay lay, Length radius) : ILay, IFolds
    {
        public Length SmallestFoldRadius => radius;

        public Surface Surface => lay.Pipe;

        public StripStock Stock => lay.Stock;

        public string Description => lay.Description;

        public string Instruction => lay.Instruction;

        public StripCourse Course => lay.Course;

        public ValueList<Strip> Strips => lay.Strips;

        public int LayersEverywhere => lay.LayersEverywhere;

        public AreaRatio LayersOnAverage => lay.LayersOnAverage;

        public IEnumerable<Finding> Judge(RuleSet rules, string subject) => lay.Judge(rules, subject);

        public Workings ShowWorkings() => lay.ShowWorkings();
    }
}
