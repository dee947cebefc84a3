using System.Globalization;
using System.Text;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;

namespace SacrificialTape.TakeOff;

/// <summary>
/// The consumption chart of the trade, computed: pipe sizes by stocked strips, with advance, angle, strip and zinc for a
/// metre of pipe, metres of pipe for a roll, and the width to take.
/// </summary>
/// <remarks>Ends, welds and splices are left out: it is a chart to choose and to plan by; a <see cref="StripTakeOff"/> orders.</remarks>
public sealed record ConsumptionChart
{
    private ConsumptionChart(SpiralSetting setting, ValueList<ChartRow> rows)
    {
        this.Setting = setting;
        this.Rows = rows;
    }

    /// <summary>How lap or advance was stated, for all cells.</summary>
    public SpiralSetting Setting { get; }

    /// <summary>One row for each pipe size, in the order given.</summary>
    public ValueList<ChartRow> Rows { get; }

    /// <summary>Works out a chart.</summary>
    /// <param name="sizes">The pipe sizes, at least one.</param>
    /// <param name="stocks">The stocked strips, at least one.</param>
    /// <param name="setting">How lap or advance is stated.</param>
    /// <param name="rules">The rules that a spiral must keep; left out: the default rule set.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the rule set.</param>
    /// <exception cref="ArgumentException">There is no size or no stock.</exception>
    public static ConsumptionChart Of(
        IEnumerable<PipeSize> sizes,
        IEnumerable<StripStock> stocks,
        SpiralSetting setting,
        RuleSet? rules = null,
        LayChoices? choices = null)
    {
        var pipes = new ValueList<PipeSize>(sizes);
        StripStock[] strips = [.. new ValueList<StripStock>(stocks).OrderBy(static stock => stock.WidthMm).ThenBy(static stock => stock.Tape.Foil.ThicknessMm)];
        if (pipes.Count == 0 || strips.Length == 0)
        {
            throw new ArgumentException("A chart needs at least one pipe size and one stocked strip.", pipes.Count == 0 ? nameof(sizes) : nameof(stocks));
        }

        _ = setting.ValueMm;
        RuleSet kept = rules ?? RuleSet.Default;
        LayChoices chosen = choices ?? LayChoices.FromRules(kept);
        return new(setting, new ValueList<ChartRow>(pipes.Select(size => Row(size, strips, setting, chosen, kept))));
    }

    /// <summary>The chart as comma-separated text with a header line; numbers invariant, units in the names of the columns.</summary>
    public string ToCsv()
    {
        var text = new StringBuilder("nps,dn,outside_diameter_mm,foil_mm,width_mm,angle_deg,advance_mm,true_lap_mm,layers_everywhere,strip_m_per_m,zinc_kg_per_m,pipe_m_per_roll,recommended\n");
        foreach (ChartRow row in this.Rows)
        {
            foreach (ChartCell cell in row.Cells)
            {
                SpiralSolution spiral = cell.Geometry.Solution;
                text.Append(CultureInfo.InvariantCulture, $"{row.Size.Nps},{row.Size.Dn},{row.Size.OutsideDiameter.Millimeters},{cell.Stock.Tape.Foil.ThicknessMm},{cell.Stock.WidthMm},");
                text.Append(CultureInfo.InvariantCulture, $"{spiral.AngleDegrees:0.00},{spiral.AdvanceMm:0.0},{spiral.TrueLapMm:0.0},{cell.LayersEverywhere},");
                text.Append(CultureInfo.InvariantCulture, $"{cell.StripPerMeter.Meters:0.000},{cell.ZincPerMeter.Kilograms:0.0000},{cell.PipePerRoll.Meters:0.00},{(cell == row.Recommended ? "yes" : "no")}\n");
            }
        }

        return text.ToString();
    }

    /// <summary>Sizes and setting.</summary>
    public override string ToString() => $"{this.Rows.Count} pipe size(s)";

    private static ChartRow Row(PipeSize size, StripStock[] strips, SpiralSetting setting, LayChoices choices, RuleSet rules)
    {
        ChartCell[] cells = [.. strips.Select(stock => ChartCell.Of(size, stock, setting, choices, rules)).OfType<ChartCell>()];
        // Of equal widths the first, the thinnest foil: life is not the chart's to judge.
        ChartCell? widest = cells
            .Where(static cell => cell.Findings.Count == 0 && cell.LayersEverywhere > 0)
            .MaxBy(static cell => cell.Stock.WidthMm);
        return new(size, ValueList<ChartCell>.Owning(cells), widest, Why(cells, widest));
    }

    private static string Why(ChartCell[] cells, ChartCell? widest)
    {
        if (widest is null)
        {
            return cells.Length == 0
                ? "no stocked strip goes round this pipe at this setting"
                : "every stocked strip breaks a rule: " + Broken(cells[0]);
        }

        ChartCell? wider = cells.FirstOrDefault(cell => cell.Stock.WidthMm > widest.Stock.WidthMm);
        string width = string.Create(CultureInfo.InvariantCulture, $"{widest.Stock.WidthMm:0.##} mm");
        return wider is null
            ? $"{width}: the widest stocked, fewest turns"
            : string.Create(CultureInfo.InvariantCulture, $"{width}: the widest that keeps every rule; {wider.Stock.WidthMm:0.##} mm breaks {Broken(wider)}");
    }

    private static string Broken(ChartCell cell) => cell.Findings.Count > 0
        ? string.Join(", ", cell.Findings.Select(static finding => finding.Rule.Id))
        : "the cover: no layer everywhere";
}
