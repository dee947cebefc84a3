using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Rings side by side on a straight pipe, their laps made equal so that the last one ends at the end of the pipe.</summary>
/// <remarks>
/// Rings: n = ceil((h - o)/(w - o)), 1 when the pipe is no longer than the strip is wide; lap (n w - h)/(n - 1), never less
/// than asked. A ring is the circumference plus its lap on itself. At the two ends of the pipe lies one ring only.
/// </remarks>
public sealed record RingLay : ParallelLay, IPlacedStrips
{
    /// <summary>Lays rings.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or takes over 100 million strips.</exception>
    public RingLay(StraightPipe pipe, StripStock stock, Length leastLap, LayChoices? choices = null)
        : this(ParallelInput.Accept(pipe, stock, leastLap, choices))
    {
    }

    private RingLay(in ParallelInput input)
        : base(input, Cut(input, default(NoSteps)))
    {
    }

    /// <summary>Rings in one pass.</summary>
    public int Rings => this.SideBySide;

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture, $"{this.Rings} ring(s), lap {this.LapMm:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public override string Instruction => this.Rings == 1
        ? string.Create(CultureInfo.InvariantCulture, $"Lay 1 ring, lapped {this.Choices.EndLapMm:0.#} mm on itself.{this.Choices.Repeated}")
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Lay {this.Rings} rings, a new one every {this.SpacingMm:0.0} mm (lap {this.LapMm:0.0} mm), each lapped {this.Choices.EndLapMm:0.#} mm on itself.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public override StripCourse Course => StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.Rings > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }

        if (rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) is { } endLap)
        {
            yield return endLap;
        }
    }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = Cut(this.Input, steps);
        return steps.Under("Rings on " + this.Pipe.Description);
    }

    /// <inheritdoc/>
    public ValueList<PlacedStrip> PlaceStrips() => StripPlacing.Rings(
        this.Choices.Passes, this.Rings, 0, this.SpacingMm, this.Stock.WidthMm, this.Strips[0].LengthUm / 1e3);

    private static ParallelCut Cut<TSteps>(in ParallelInput input, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        RingKernel.Cut(input.Pipe.DiameterMm, input.Pipe.LengthMm, input.Stock, input.LeastLapMm, input.Choices, steps);
}
