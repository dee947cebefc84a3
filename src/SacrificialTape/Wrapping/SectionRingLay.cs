using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Rings side by side round a rectangular hollow section, their end laps on its widest flat face.</summary>
/// <remarks>
/// Only an outline without hollows can be wrapped: a ring does not go into a fillet. Rings: n = ceil((l - o)/(w - o)), 1
/// when the section is no longer than the strip is wide; lap (n w - l)/(n - 1). A ring is the perimeter plus its end lap,
/// which must find room on the widest flat face, in whose middle it lies.
/// </remarks>
public sealed record SectionRingLay : ILay, IFolds
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;

    /// <summary>Lays rings round a hollow section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is negative, not less than the strip is wide, or takes over 100 million strips; or the end lap is longer
    /// than the widest flat face.
    /// </exception>
    public SectionRingLay(RectangularHollowSection section, StripStock stock, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(stock);
        this.Section = section;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        double face = SectionPlaces.WidestFaceMm(section.Outline(default(NoSteps)));
        if (!WithAllowance.AtMost(this.Choices.EndLapMm, face))
        {
            throw AcceptedRange.Between(0, face, "mm").Noting("the end lap lies on the widest flat face")
                .Refuse(this.Choices.EndLapMm, nameof(choices));
        }

        Solution solved = this.Solve(default(NoSteps));
        this.Rings = StripCount.Whole(solved.Rings, stock.WidthMm, this.askedLapMm.Bare);
        this.lapMm = new StoredNumber(solved.LapMm);
        this.LayersEverywhere = (int)solved.Layers;

        // A single ring wider than the section is long stands over; what stands over is cut off along its whole length.
        double perimeter = section.PerimeterMm(default(NoSteps));
        double cover = perimeter * Math.Min(1, section.LengthMm / (this.Rings * stock.WidthMm));
        double trim = this.Rings > 1 ? 0 : solved.RingMm * Math.Max(0, 1 - (section.LengthMm / stock.WidthMm));
        this.Strips = [Strip.Computed(stock, solved.RingMm, this.Rings * this.Choices.Passes, StripPurpose.Ring, false, cover, trim)];
    }

    /// <summary>The section.</summary>
    public RectangularHollowSection Section { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Rings in one pass.</summary>
    public int Rings { get; }

    /// <summary>The lap that the rings really get; zero when there is one.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>The corners along a ring from its beginning in the middle part of the widest flat face: where it is pre-folded.</summary>
    public ValueList<Fold> Folds => SectionPlaces.AlongRing(this.Section.Outline(default(NoSteps)), this.Choices.EndLapMm);

    /// <summary>The radius of the corners; zero where they are sharp.</summary>
    public Length SmallestFoldRadius => this.Section.OutsideCornerRadius;

    Surface ILay.Surface => this.Section;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenCount))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Section);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture, $"{this.Rings} ring(s) round the section, lap {this.lapMm.Bare:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Begin each ring in the middle part of the widest flat face and pre-fold it at the corners: {string.Join("; ", this.Folds)} from its beginning. Lay {this.Rings} ring(s), a new one every {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm (lap {this.lapMm.Bare:0.0} mm), each lapped {this.Choices.EndLapMm:0.#} mm on itself on that face, never on a corner. On upright sections work from the bottom up; on lying ones let the free edge of the end lap face down on a side.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
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
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Section.Outline(steps);
        _ = this.Solve(steps);
        return steps.Under("Rings round " + this.Section.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private Solution Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double length = this.Section.LengthMm;
        double perimeter = this.Section.PerimeterMm(steps);
        double ring = SpanKernel.RingLengthMm(perimeter, this.Choices.EndLapMm, steps);
        double count = SpanKernel.OpenCount(length, width, this.askedLapMm.Bare, steps);
        if (count < 2)
        {
            return new(count, 0, ring, this.Choices.Passes); // a single ring has no neighbour to wander from
        }

        double lap = SpanKernel.OpenLapMm(count, width, length, steps);
        double layers = SpanKernel.OpenLayers(this.Choices.Passes, width, this.Choices.WanderMm, width - lap, steps);
        return new(count, lap, ring, layers);
    }

    private readonly record struct Solution(double Rings, double LapMm, double RingMm, double Layers);
}
