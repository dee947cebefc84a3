using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace HostTool;

/// <summary>One strip down the middle of each flat of a column, lapped over both edges onto the neighbours.</summary>
/// <remarks>The strip is wider than a flat at the foot, and reaches at the head no farther than across one neighbour.</remarks>
#region lay
public sealed record FlatStripLay : ILay
{
    private readonly OctagonalColumn column;
    private readonly double edgeRadiusMm;

    public FlatStripLay(OctagonalColumn column, StripStock stock, Length edgeRadius)
    {
        ArgumentNullException.ThrowIfNull(column);
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentOutOfRangeException.ThrowIfNegative(edgeRadius.Millimeters, nameof(edgeRadius));
        double least = column.FlatAtFoot.Millimeters;
        double most = 3 * column.FlatAtHead.Millimeters;
        if (stock.Width.Millimeters <= least || stock.Width.Millimeters > most)
        {
            throw new ArgumentOutOfRangeException(nameof(stock), string.Create(
                CultureInfo.InvariantCulture, $"A strip of {stock.Width.Millimeters:0.#} mm does not go down a flat of this {column.Description}: more than {least:0.0} and at most {most:0.0} mm wide."));
        }

        this.column = column;
        this.Stock = stock;
        this.edgeRadiusMm = edgeRadius.Millimeters;
        Length cover = column.Area / (OctagonalColumn.Flats * stock.Width);
        this.Strips = [new Strip(stock, column.SlantHeight, OctagonalColumn.Flats, StripPurpose.Other, maySplice: true, cover, trim: Length.Zero)];
    }

    public Surface Surface => this.column;

    public StripStock Stock { get; }

    public Length LapAtFoot => this.Stock.Width - this.column.FlatAtFoot;

    public string Description => string.Create(
        CultureInfo.InvariantCulture, $"{OctagonalColumn.Flats} strips down the flats, lap {this.LapAtFoot.Millimeters:0.#} mm at the foot");

    public string Instruction => string.Create(
        CultureInfo.InvariantCulture, $"Mark the middle of each flat. Lay a strip down the middle of every second flat, fold it over both edges, then those between. Lap at the foot {this.LapAtFoot.Millimeters:0.0} mm, more above.");

    public StripCourse Course => StripCourse.Along;

    public ValueList<Strip> Strips { get; }

    // Two neighbours drift apart by the wander at worst: the lap at the foot must take it.
    public int LayersEverywhere => this.LapAtFoot >= LayChoices.Default.HandWander ? 1 : 0;

    public AreaRatio LayersOnAverage => AreaRatio.FromRatio(
        OctagonalColumn.Flats * this.Stock.Width.Meters * this.column.SlantHeight.Meters / this.column.Area.SquareMeters);

    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleIds.MinimumLap].Judge(Measure.Of(this.LapAtFoot), subject) is { } lap)
        {
            yield return lap;
        }

        // The library judges folds of its own lays; what a lay of another's folds over, only that lay knows.
        double foils = this.edgeRadiusMm / this.Stock.Tape.Foil.Thickness.Millimeters;
        if (rules[RuleIds.MinimumFoldRadius].Judge(new Measure(foils, TradeUnit.One), subject) is { } fold)
        {
            yield return fold;
        }
    }

    public Workings ShowWorkings() => new("Strips down the flats of an " + this.column.Description,
    [
        .. this.column.Steps(),
        ColumnFormulas.LapAtFoot.Step(this.LapAtFoot.Millimeters, this.Stock.Width.Millimeters, this.column.FlatAtFoot.Millimeters),
        ColumnFormulas.Cover.Step(
            this.Strips[0].Cover.Millimeters,
            this.column.SlantHeight.Millimeters,
            this.column.FlatAtFoot.Millimeters,
            this.column.FlatAtHead.Millimeters,
            this.Stock.Width.Millimeters),
    ]);

    public override string ToString() => this.Description;
}
#endregion
