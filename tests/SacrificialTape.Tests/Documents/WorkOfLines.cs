using SacrificialTape.Documents;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>The work of a job's lines, so that a host need not guess under which kind a norm is looked for.</summary>
public sealed class WorkOfLines
{
    private static readonly Lifetime Life = Lifetime.Of(Duration.FromYears365(5));

    // By hand: the steel once, pi D L, and what lies on it.
    [Fact]
    public void A_line_is_worked_as_its_lay_says_and_its_welds_apart()
    {
        var spiral = new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)), SpiralEnds.LevelTurns(1), new LayChoices(Mm(10), Mm(0), 1, ApplicationMethod.WrappingHead));
        var welds = new WeldWork([new GirthWelds(Mm(168.3), 3)], Stock(), Mm(20));
        JobDocument document = Document(new SurveyLine("A", spiral, ZincExposure.FromCategory(CorrosivityCategory.C3), Life, welds: welds));
        ValueList<LabourWork> work = document.WorkByLine();
        Assert.Equal(["spiral, wrapping head, pipe", "weld, by hand, pipe"], work.Select(static one => one.Kind.ToString()));
        Assert.Equal(spiral.Pipe.Area.SquareMeters, work[0].Area.SquareMeters, 1e-12);
        Assert.Equal(document.Job.Estimate().StripLength.Meters, work.Sum(static one => one.StripLength.Meters), 1e-9);
        Assert.Equal(3, work[1].Pieces);
        // Three rings, each as long as the pipe is round, as wide as the strip.
        Assert.Equal(3 * Math.PI * 0.1683 * Stock().Width.Meters, work[1].Area.SquareMeters, 1e-6);
        Assert.Equal("rack", document.WorkByLine(static _ => "rack")[0].Kind.Surface);
    }

    [Fact]
    public void What_stays_clear_is_not_worked_on()
    {
        SurveyLine line = new(
            new LineNeeds("A", ZincExposure.FromCategory(CorrosivityCategory.C3), Life, spots: [StayClear.Spot(StayClearKind.NamePlate, Mm(100), Mm(200), margin: Mm(0))]), new RingLay(Pipe(), Stock(), Mm(20)));
        LabourWork work = Assert.Single(Document(line).WorkByLine());
        Assert.Equal(Pipe().Area.SquareMeters - 0.02, work.Area.SquareMeters, 1e-9);
        Assert.Equal(StripPurpose.Ring, work.Kind.Lay);
    }

    // Every lay of the library that takes choices is asked for its method.
    [Fact]
    public void Each_lay_says_how_it_is_laid()
    {
        foreach (Func<Random, StripStock, ILay> make in LayKinds.All)
        {
            for (int seed = 0; seed < 4; seed++)
            {
                ILay lay = make(new Random(seed), Stock(57));
                LayChoices? stated = lay is SpiralPairLay pair ? pair.First.Choices : lay is InterruptedLay split ? ((RingLay)split.Spans[0]).Choices : (LayChoices)lay.GetType().GetProperty("Choices")!.GetValue(lay)!;
                Assert.Equal(stated.Method, LineWork.Method(lay));
            }
        }
    }

    [Fact]
    public void What_is_priced_by_these_kinds_is_costed()
    {
        JobDocument bare = Document(new SurveyLine("A", new RingLay(Pipe(), Stock(), Mm(20)), ZincExposure.FromCategory(CorrosivityCategory.C3), Life));
        LabourWork work = Assert.Single(bare.WorkByLine());
        var prices = new CostPrices([new RollPrice(Stock(), new Money(40, "EUR"))], new LabourRate(new Money(50, "EUR")), [new LabourNorm(new LabourKind(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe"), LabourMeasure.Pieces, Duration.FromHours(1))]);
        var priced = new JobDocument(bare.Job, prices);
        var estimate = new EstimateDocument(priced, new DateOnly(2031, 5, 4), priced.WorkByLine());
        Assert.Equal((40m * estimate.Results.Totals.Rolls) + (50m * work.Pieces), estimate.Results.FirstCost!.Value.Amount);
    }

    [Fact]
    public void A_surface_without_a_word_is_refused()
    {
        JobDocument document = Document(new SurveyLine("A", new OwnLay(new OwnSurface(new Measure(20, TradeUnit.Inch), 3), Stock(), "tiles"), ZincExposure.FromCategory(CorrosivityCategory.C3), Life));
        Assert.Contains("has no form", Assert.Throws<ArgumentException>(() => document.WorkByLine()).Message, StringComparison.Ordinal);
        Assert.NotEmpty(document.WorkByLine(forms: AnyJob.Forms));
    }

    private static JobDocument Document(SurveyLine line) => new(new Job("job", [line], Make.TakeOff()));
}
