using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A strip wound round a pipe: angle, advance and laps, without ends or length.</summary>
/// <remarks>
/// <para>The pipe, unrolled, is a strip of paper as wide as its circumference C; the tape lies on it as a straight band
/// at an angle theta. tan theta = p/C, e = p cos theta, sin theta = e/C; tape area over pipe area is w/e exactly.</para>
/// <para>Range: outside diameter 1 mm to 100 m, strip width 1 to 2000 mm, true lap zero or more, advance across the
/// strip less than the circumference. On very thin pipe a lap along the pipe can be met by two angles; the flatter one is
/// taken. A value type of 48 bytes without allocation; <c>default</c> is unset and says so
/// when read.</para>
/// </remarks>
public readonly record struct SpiralGeometry : IHasWorkings
{
    private readonly StoredNumber diameterMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber advanceMm;
    private readonly StoredNumber trueAdvanceMm;
    private readonly SpiralSetting setting;

    /// <summary>Solves a spiral.</summary>
    /// <param name="outsideDiameter">Of the pipe, 1 mm to 100 m.</param>
    /// <param name="stripWidth">1 to 2000 mm.</param>
    /// <param name="setting">How the crew states lap or advance.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range: a lap that is not less than the strip width, or a setting that leaves no spiral on
    /// this pipe. The message says which settings would do.
    /// </exception>
    public SpiralGeometry(Length outsideDiameter, Length stripWidth, SpiralSetting setting)
    {
        double diameter = StraightPipe.CheckDiameter(outsideDiameter, nameof(outsideDiameter));
        double width = AcceptedRange.Between(1, 2000, "mm").Check(UnitConversions.Millimeters(stripWidth), nameof(stripWidth));
        SpiralSettingCheck.Accept(diameter, width, setting);
        SpiralSolution spiral = SpiralKernel.Solve(diameter, width, setting.Convention, setting.ValueMm, default(NoSteps));
        this.diameterMm = new StoredNumber(diameter);
        this.widthMm = new StoredNumber(width);
        this.advanceMm = new StoredNumber(spiral.AdvanceMm);
        this.trueAdvanceMm = new StoredNumber(spiral.TrueAdvanceMm);
        this.setting = setting;
    }

    /// <summary>Outside diameter of the pipe.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.DiameterMm);

    /// <summary>Width of the strip.</summary>
    public Length StripWidth => Length.FromMillimeters(this.widthMm.Read(nameof(SpiralGeometry)));

    /// <summary>How the crew stated it.</summary>
    public SpiralSetting Setting
    {
        get
        {
            _ = this.DiameterMm;
            return this.setting;
        }
    }

    /// <summary>Angle between strip and circumference, 0 for a ring.</summary>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.AngleFromAdvance))]
    public Angle Angle => Angle.FromDegrees(this.Solution.AngleDegrees);

    /// <summary>Advance along the pipe in one turn: the distance between two setting marks.</summary>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.AdvanceFromTrueAdvance))]
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.AdvanceFromLapAlongPipe))]
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.AdvanceFromMarks))]
    public Length Advance => Length.FromMillimeters(this.Solution.AdvanceMm);

    /// <summary>Advance across the strip in one turn.</summary>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.TrueAdvanceFromAdvance))]
    public Length TrueAdvance => Length.FromMillimeters(this.Solution.TrueAdvanceMm);

    /// <summary>Lap across the strip: the one that a least lap is judged on.</summary>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.TrueLap))]
    public Length TrueLap => Length.FromMillimeters(this.Solution.TrueLapMm);

    /// <summary>Lap along the axis of the pipe, from edge to edge.</summary>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.LapAlongPipe))]
    public Length LapAlongPipe => Length.FromMillimeters(this.Solution.LapAlongPipeMm);

    /// <summary>Tape area over pipe area: the number of layers on average.</summary>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.LayersOnAverage))]
    public AreaRatio LayersOnAverage => AreaRatio.FromRatio(this.Solution.LayersOnAverage);

    internal SpiralSolution Solution => new(
        PipeKernel.CircumferenceMm(this.DiameterMm, default(NoSteps)),
        this.widthMm.Bare,
        this.advanceMm.Bare,
        this.trueAdvanceMm.Bare);

    private double DiameterMm => this.diameterMm.Read(nameof(SpiralGeometry));

    /// <summary>Two are equal when pipe, strip and setting are: what follows from them is not compared, since its last digits may differ.</summary>
    /// <param name="other">The other one.</param>
    public bool Equals(SpiralGeometry other) =>
        this.diameterMm.Equals(other.diameterMm) && this.widthMm.Equals(other.widthMm) && this.setting.Equals(other.setting);

    /// <summary>The hash of pipe, strip and setting.</summary>
    public override int GetHashCode() => HashCode.Combine(this.diameterMm, this.widthMm, this.setting);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Spiral on a pipe");
    }

    /// <summary>Pipe, strip and setting in a few words.</summary>
    public override string ToString() => this.diameterMm.IsSet
        ? $"strip {MeasureText.Write(this.widthMm.Bare, TradeUnit.Millimeter, 6)} wide on pipe {MeasureText.Write(this.DiameterMm, TradeUnit.Millimeter, 6)}, {this.setting}"
        : "unset";

    internal SpiralSolution Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => SpiralKernel.Solve(
            this.DiameterMm, this.widthMm.Bare, this.setting.Convention, this.setting.ValueMm, steps);
}
