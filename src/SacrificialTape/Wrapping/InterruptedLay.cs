using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>A pipe with bands that stay clear, each span between them laid as a pipe of its own, with its own ends.</summary>
/// <remarks>
/// Layers everywhere: the least of all spans. All spans take the same strip. Nothing is laid on the bands and their
/// margins: what runs past the end of a span is trimmed off like at the end of a pipe.
/// </remarks>
public sealed record InterruptedLay : ILay
{
    private readonly InterruptedPipe pipe;

    /// <summary>Lays a pipe span by span.</summary>
    /// <param name="pipe">The pipe with its bands.</param>
    /// <param name="spans">A lay for each span, in their order, on the pipe of that span.</param>
    /// <exception cref="ArgumentException">The lays are not one for each span, not on its pipe, or not of one stock.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are more than 2,147,483,647 like strips.</exception>
    public InterruptedLay(InterruptedPipe pipe, IEnumerable<ILay> spans)
    {
        ValueList<ILay> allSpans = spans.Listed();
        ArgumentNullException.ThrowIfNull(pipe);
        if (allSpans.Count != pipe.Spans.Count)
        {
            throw new ArgumentException($"The pipe has {pipe.Spans.Count} span(s), but {allSpans.Count} lay(s) are given.", nameof(spans));
        }

        for (int i = 0; i < allSpans.Count; i++)
        {
            if (!allSpans[i].Surface.Equals(pipe.Spans[i].Pipe))
            {
                throw new ArgumentException($"Lay {i + 1} is on {allSpans[i].Surface}, the span on {pipe.Spans[i].Pipe}.", nameof(spans));
            }

            if (!allSpans[i].Stock.Equals(allSpans[0].Stock))
            {
                throw new ArgumentException($"Lay {i + 1} is of {allSpans[i].Stock}, the first of {allSpans[0].Stock}.", nameof(spans));
            }
        }

        this.pipe = pipe;
        this.Spans = allSpans;
        this.Strips = Gather(allSpans);
        this.LayersEverywhere = allSpans.Min(static lay => lay.LayersEverywhere);
    }

    /// <summary>The pipe with its bands.</summary>
    public InterruptedPipe Pipe => this.pipe;

    /// <summary>The lay of each span.</summary>
    public ValueList<ILay> Spans { get; }

    /// <inheritdoc/>
    public StripStock Stock => this.Spans[0].Stock;

    Surface ILay.Surface => this.pipe;

    /// <inheritdoc/>
    public StripCourse Course => this.Spans.All(lay => lay.Course == this.Spans[0].Course)
        ? this.Spans[0].Course
        : StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(StayClearFormulas), nameof(StayClearFormulas.CoveredLength))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.pipe);

    /// <inheritdoc/>
    public string Description => $"{this.Spans.Count} span(s) between bands that stay clear: {string.Join("; ", this.Alike().Select(static one => Counted(one.Spans.Count, one.Lay.Description)))}";

    /// <inheritdoc/>
    public string Instruction => $"Lay each span for itself, with its own ends; lay nothing between them. {string.Join(' ', this.Alike().Select(static one => $"From {string.Join(", from ", one.Spans)}: {one.Lay.Instruction}"))}";

    /// <summary>Lays every span the same way.</summary>
    /// <param name="pipe">The pipe with its bands.</param>
    /// <param name="lay">Makes the lay on the pipe of a span; asked once for each length.</param>
    /// <exception cref="ArgumentException">What is made is not on the pipe of its span, or not of one stock.</exception>
    public static InterruptedLay Of(InterruptedPipe pipe, Func<StraightPipe, ILay> lay)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        ArgumentNullException.ThrowIfNull(lay);
        var made = new Dictionary<StraightPipe, ILay>();
        var spans = new ILay[pipe.Spans.Count];
        for (int i = 0; i < spans.Length; i++)
        {
            StraightPipe span = pipe.Spans[i].Pipe;
            if (!made.TryGetValue(span, out ILay? known))
            {
                made.Add(span, known = lay(span));
            }

            spans[i] = known;
        }

        return new InterruptedLay(pipe, new ValueList<ILay>(spans));
    }

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject) =>
        this.Alike().SelectMany(one => one.Lay.Judge(rules, subject)).Distinct();

    /// <inheritdoc/>
    public Workings ShowWorkings() => new(
        "Spans of " + this.pipe.Description,
        new ValueList<WorkingStep>(this.pipe.ShowWorkings().Steps.Concat(this.Alike().SelectMany(static one => one.Lay.ShowWorkings().Steps))));

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private static string Counted(int count, string what) => count == 1
        ? what
        : string.Create(CultureInfo.InvariantCulture, $"{count} times {what}");

    // Like strips of all spans are one kind to cut.
    private static ValueList<Strip> Gather(ValueList<ILay> spans)
    {
        var gathered = new List<Strip>();
        foreach (Strip strip in spans.SelectMany(static lay => lay.Strips))
        {
            int known = gathered.FindIndex(strip.IsLike);
            if (known < 0)
            {
                gathered.Add(strip);
            }
            else
            {
                gathered[known] = gathered[known].Times((long)gathered[known].Count + strip.Count);
            }
        }

        return new ValueList<Strip>(gathered);
    }

    // Spans with equal lays, in the order of their first span.
    private List<(ILay Lay, List<PipeSpan> Spans)> Alike()
    {
        var groups = new List<(ILay Lay, List<PipeSpan> Spans)>();
        for (int i = 0; i < this.Spans.Count; i++)
        {
            ILay lay = this.Spans[i];
            int known = groups.FindIndex(group => ReferenceEquals(group.Lay, lay) || group.Lay.Equals(lay));
            if (known < 0)
            {
                groups.Add((lay, [this.pipe.Spans[i]]));
            }
            else
            {
                groups[known].Spans.Add(this.pipe.Spans[i]);
            }
        }

        return groups;
    }
}
