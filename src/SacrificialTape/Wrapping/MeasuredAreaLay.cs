using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Tape for an area that was measured: a length of strip, without a place for any strip.</summary>
/// <remarks>
/// Strip of one layer: A/(w - o), with the allowance of the area. It is judgement throughout: since no strip has a place,
/// <see cref="LayersEverywhere"/> is what was wanted as long as the laps are kept, and no cover is proved. A finding says so.
/// </remarks>
public sealed record MeasuredAreaLay : ILay
{
    private const double LongestPieceMm = 1e9;

    private readonly StoredNumber lapMm;

    /// <summary>States tape for a measured area.</summary>
    /// <param name="area">The area, with its allowance.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="lap">The lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">Wander, method, and the wanted layers as passes; left out: those of the default rule set, one layer.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is not less than the strip is wide, or negative, or leaves next to no strip.</exception>
    public MeasuredAreaLay(MeasuredArea area, StripStock stock, Length lap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(stock);
        this.Area = area;
        this.Stock = stock;
        this.Choices = choices ?? LayChoices.Default;
        this.lapMm = new StoredNumber(AcceptedLap.Mm(stock, lap, nameof(lap)));
        (double length, double layers) = this.Solve(default(NoSteps));
        this.LayersEverywhere = (int)layers;

        // One piece a layer, that may be spliced anywhere; a strip is at most 1000 km long.
        int pieces = StripCount.Whole(WithAllowance.Ceiling(length / LongestPieceMm), stock.WidthMm, this.lapMm.Bare);
        double cover = UnitConversions.SquareMeters(area.Area) * 1e6 / stock.WidthMm;
        this.Strips = [Strip.Computed(stock, length / pieces, pieces * this.Choices.Passes, StripPurpose.Other, true, cover / pieces, 0)];
    }

    /// <summary>The area.</summary>
    public MeasuredArea Area { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>Wander, wanted layers as passes, and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap between neighbours.</summary>
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>Share of the strip's width that laps.</summary>
    [BasisOf(typeof(MeasuredAreaFormulas), nameof(MeasuredAreaFormulas.LapShare))]
    public AreaRatio LapShare => AreaRatio.FromRatio(MeasuredAreaKernel.LapShare(this.lapMm.Bare, this.Stock.WidthMm, default(NoSteps)));

    /// <summary>Length of strip for all layers.</summary>
    [BasisOf(typeof(MeasuredAreaFormulas), nameof(MeasuredAreaFormulas.StripLength))]
    public Length StripLength => Length.FromMillimeters(this.Strips.Sum(static strip => strip.Count * (strip.LengthUm / 1e3)));

    /// <summary>On what the lay rests: judgement, in the words of the area's note.</summary>
    public Basis Basis => this.Area.Basis;

    Surface ILay.Surface => this.Area;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.OnFace;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <summary>The layers wanted, as long as the laps are kept; nothing proves them.</summary>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(MeasuredAreaFormulas), nameof(MeasuredAreaFormulas.StripLength))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Area);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"tape by measured area, lap {this.lapMm.Bare:0.#} mm ({100 * this.lapMm.Bare / this.Stock.WidthMm:0.#} % of the strip), {this.Choices.Passes} layer(s): judgement, no cover proved");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Lay strips side by side, a new one every {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm (lap {this.lapMm.Bare:0.0} mm), on upright or sloping steel from the bottom up, so that each lap sheds water and the last edge faces down. There is no plan of strips: look for bare spots before you leave, and note what tape is left over.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }

        yield return rules[RuleIds.TapeByMeasuredArea].State(subject);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Tape for " + this.Area.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private (double LengthMm, double Layers) Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double share = MeasuredAreaKernel.LapShare(this.lapMm.Bare, width, steps);
        double length = MeasuredAreaKernel.StripLengthMm(UnitConversions.SquareMeters(this.Area.Area), width, share, steps);
        double layers = MeasuredAreaKernel.Layers(this.Choices.Passes, width, this.lapMm.Bare, this.Choices.WanderMm, steps);
        return (length, layers);
    }
}
