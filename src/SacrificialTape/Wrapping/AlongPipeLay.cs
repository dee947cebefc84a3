using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips along a straight pipe, side by side round it, their laps made equal.</summary>
/// <remarks>
/// Strips: n = ceil(C/(w - o)); lap w - C/n, never less than asked; layers everywhere floor(w/(C/n + wander)). The strips
/// run from end to end and may be spliced.
/// </remarks>
public sealed record AlongPipeLay : ParallelLay, IPlacedStrips
{
    /// <summary>Lays strips along a pipe.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 million strips.</exception>
    public AlongPipeLay(StraightPipe pipe, StripStock stock, Length leastLap, LayChoices? choices = null)
        : this(ParallelInput.Accept(pipe, stock, leastLap, choices))
    {
    }

    private AlongPipeLay(in ParallelInput input)
        : base(input, Cut(input, default(NoSteps)))
    {
    }

    /// <summary>Strips round the pipe in one pass.</summary>
    public int StripsRound => this.SideBySide;

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.StripsRound} strip(s) along the pipe, lap {this.LapMm:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public override string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Lay {this.StripsRound} strip(s) along the pipe, a new one every {this.SpacingMm:0.0} mm round it (lap {this.LapMm:0.0} mm).{this.Choices.Repeated}");

    /// <inheritdoc/>
    public override StripCourse Course => StripCourse.Along;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }
    }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = Cut(this.Input, steps);
        return steps.Under("Strips along " + this.Pipe.Description);
    }

    /// <inheritdoc/>
    public ValueList<PlacedStrip> PlaceStrips() => StripPlacing.Alongside(
        this.Choices.Passes, this.StripsRound, 0, this.Pipe.LengthMm, this.SpacingMm, this.Stock.WidthMm);

    private static ParallelCut Cut<TSteps>(in ParallelInput input, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double height = input.Pipe.LengthMm;
        double width = input.Stock.WidthMm;
        LayChoices choices = input.Choices;
        double circumference = PipeKernel.CircumferenceMm(input.Pipe.DiameterMm, steps);
        double count = SpanKernel.ClosedCount(circumference, width, input.LeastLapMm, steps);
        double lap = SpanKernel.ClosedLapMm(width, circumference, count, steps);
        double layers = SpanKernel.ClosedLayers(choices.Passes, width, choices.WanderMm, circumference, count, steps);
        int round = StripCount.Whole(count, width, input.LeastLapMm);
        double cover = height * circumference / (count * width);
        return new(
            round,
            lap,
            StripCount.Layers(layers, input.LeastLapMm),
            Strip.Computed(input.Stock, height, round * choices.Passes, StripPurpose.AlongPipe, true, cover, 0));
    }
}
