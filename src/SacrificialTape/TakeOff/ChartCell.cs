using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>One pipe size under one stocked strip: what a spiral takes for each metre of pipe, ends left out.</summary>
public sealed record ChartCell : IHasWorkings
{
    private readonly SpiralLay lay;

    private ChartCell(PipeSize size, SpiralLay lay, RuleSet rules)
    {
        this.Size = size;
        this.lay = lay;
        this.Findings = new ValueList<Finding>(StockRules.Judge(lay.Stock, rules, $"NPS {size.Nps}").Concat(lay.Judge(rules, $"NPS {size.Nps}")));
    }

    /// <summary>The pipe size.</summary>
    public PipeSize Size { get; }

    /// <summary>The stocked strip.</summary>
    public StripStock Stock => this.lay.Stock;

    /// <summary>Angle, advance and laps.</summary>
    public SpiralGeometry Geometry => this.lay.Geometry;

    /// <summary>Layers everywhere in the body of the spiral.</summary>
    public int LayersEverywhere => this.lay.LayersEverywhere;

    /// <summary>Strip for a metre of pipe.</summary>
    [BasisOf(typeof(ChartFormulas), nameof(ChartFormulas.StripPerMeter))]
    public Length StripPerMeter => Length.FromMillimeters(ChartKernel.StripPerMeterMm(this.Geometry.Solution, default(NoSteps)));

    /// <summary>Zinc on a metre of pipe.</summary>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.Mass))]
    public Mass ZincPerMeter => this.Stock.ZincMass(this.StripPerMeter);

    /// <summary>Pipe that a roll covers.</summary>
    [BasisOf(typeof(ChartFormulas), nameof(ChartFormulas.PipePerRoll))]
    public Length PipePerRoll => Length.FromMillimeters(
        ChartKernel.PipePerRollMm(this.Geometry.Solution, this.Stock.RollMm, default(NoSteps)));

    /// <summary>The rules that the spiral breaks.</summary>
    public ValueList<Finding> Findings { get; }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        SpiralSolution spiral = this.Geometry.Solve(steps);
        double strip = ChartKernel.StripPerMeterMm(spiral, steps);
        _ = FoilKernel.Kilograms(
            strip, this.Stock.WidthMm, this.Stock.Tape.Foil.ThicknessMm, this.Stock.Tape.Foil.KilogramsPerCubicMeter, steps);
        _ = ChartKernel.PipePerRollMm(spiral, this.Stock.RollMm, steps);
        return steps.Under($"Consumption on NPS {this.Size.Nps} of {this.Stock}");
    }

    /// <summary>Size and strip.</summary>
    public override string ToString() => $"NPS {this.Size.Nps}: {this.Stock}";

    /// <summary>The cell, or null where the strip does not go round this pipe at that setting.</summary>
    internal static ChartCell? Of(PipeSize size, StripStock stock, SpiralSetting setting, LayChoices choices, RuleSet rules)
    {
        if (!SpiralSettingCheck.Fits(size.OutsideDiameter, stock.WidthMm, setting))
        {
            return null;
        }

        var meter = new StraightPipe(size, Length.FromMeters(1));
        return new ChartCell(size, new SpiralLay(meter, stock, setting, SpiralEnds.TrimmedFlush, choices), rules);
    }
}
