using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>Two spirals on one straight pipe, the second over the first and of opposite hand.</summary>
/// <remarks>
/// <para>Each spiral is a <see cref="SpiralLay"/> with its own strip width, lap, ends and passes, of the same tape. Layers
/// everywhere are those of the first and the second together, ends and wander included in each. Spirals of opposite hand
/// cross at every turn: no lap of one can run along a lap of the other, so that nothing has to be staggered.</para>
/// <para>Both are taken on the diameter of the steel: the first layer is thin against it.</para>
/// </remarks>
public sealed record SpiralPairLay : ILay
{
    /// <summary>Lays two spirals of opposite hand.</summary>
    /// <param name="first">The spiral on the steel.</param>
    /// <param name="second">The spiral over it; same pipe, same tape.</param>
    /// <param name="firstHand">Hand of the first; the second takes the other.</param>
    /// <param name="secondFromOtherEnd">Whether the second begins where the first ended. On upright or sloping steel both
    /// begin at the bottom, so that each lap sheds water: then leave it out.</param>
    /// <exception cref="ArgumentException">The second lies on another pipe or is of another tape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The hand is not known here.</exception>
    public SpiralPairLay(SpiralLay first, SpiralLay second, SpiralHand firstHand = SpiralHand.Right, bool secondFromOtherEnd = false)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (!first.Pipe.Equals(second.Pipe))
        {
            throw new ArgumentException($"The first spiral lies on {first.Pipe.Description}, the second on {second.Pipe.Description}: both must lie on the same.", nameof(second));
        }

        if (!first.Stock.Tape.Equals(second.Stock.Tape))
        {
            throw new ArgumentException("Both spirals must be of the same tape; the strips may differ in width and in length of roll.", nameof(second));
        }

        this.First = first;
        this.Second = second;
        this.FirstHand = Enum.IsDefined(firstHand)
            ? firstHand
            : throw new ArgumentOutOfRangeException(nameof(firstHand), firstHand, "Not a hand known here.");
        this.SecondFromOtherEnd = secondFromOtherEnd;
        this.LayersEverywhere = SpiralPairKernel.Layers(first.LayersEverywhere, second.LayersEverywhere, default(NoSteps));
        this.Strips = [.. first.Strips, .. second.Strips];
    }

    /// <summary>The spiral on the steel.</summary>
    public SpiralLay First { get; }

    /// <summary>The spiral over it.</summary>
    public SpiralLay Second { get; }

    /// <summary>Hand of the first spiral.</summary>
    public SpiralHand FirstHand { get; }

    /// <summary>Hand of the second spiral: the other one.</summary>
    public SpiralHand SecondHand => this.FirstHand == SpiralHand.Right ? SpiralHand.Left : SpiralHand.Right;

    /// <summary>Whether the second begins where the first ended.</summary>
    public bool SecondFromOtherEnd { get; }

    Surface ILay.Surface => this.First.Pipe;

    /// <summary>The strip of the first spiral; the second may be of another width.</summary>
    public StripStock Stock => this.First.Stock;

    /// <inheritdoc/>
    public StripCourse Course =>
        this.First.Course == StripCourse.Round && this.Second.Course == StripCourse.Round ? StripCourse.Round : StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.LayersOnAverage))]
    public AreaRatio LayersOnAverage => AreaRatio.FromRatio(this.First.LayersOnAverage.Ratio + this.Second.LayersOnAverage.Ratio);

    /// <inheritdoc/>
    public string Description =>
        $"{Word(this.FirstHand)}-hand {this.First.Description}; over it {Word(this.SecondHand)}-hand {this.Second.Description}";

    /// <inheritdoc/>
    public string Instruction =>
        $"First spiral, {Turning(this.FirstHand)}. {this.First.Instruction} Press it down over its whole length. Second spiral, over the first, {Turning(this.SecondHand)}, {(this.SecondFromOtherEnd ? "begun at the other end (level pipe only)" : "begun at the same end")}. {this.Second.Instruction} The two cross at every turn: their laps need no stagger.";

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject) =>
        [.. this.First.Judge(rules, subject + " (first spiral)"), .. this.Second.Judge(rules, subject + " (second spiral)")];

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = SpiralPairKernel.Layers(this.First.LayersEverywhere, this.Second.LayersEverywhere, steps);
        return new Workings(
            "Spirals of opposite hand on " + this.First.Pipe.Description,
            [.. this.First.ShowWorkings().Steps, .. this.Second.ShowWorkings().Steps, .. steps.Under("both").Steps]);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private static string Word(SpiralHand hand) => hand == SpiralHand.Right ? "right" : "left";

    private static string Turning(SpiralHand hand) => hand == SpiralHand.Right
        ? "right hand: turn clockwise as you look along the way you work"
        : "left hand: turn anticlockwise as you look along the way you work";
}
