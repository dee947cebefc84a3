using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>A spiral on a straight pipe, from end to end, in one pass or several.</summary>
/// <remarks>
/// Strip of one pass: h/sin theta + w/tan theta when trimmed flush; h/sin theta - w/tan theta between level turns, which
/// are pieces of circumference plus end lap each. Layers everywhere count the ends and the wander of the hand: an exact
/// half lap is one layer, since the next turn may wander off the edge of the last but one.
/// </remarks>
/// <example><code source="SpiralLayPage.cs" region="three-statements" /></example>
public sealed record SpiralLay : ILay, IPlacedStrips
{
    private readonly StraightPipe pipe;
    private readonly ValueList<Strip> strips;

    /// <summary>Lays a spiral.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="setting">How the crew states lap or advance.</param>
    /// <param name="ends">What is done at the ends; left out: trimmed flush.</param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The setting gives no spiral on this pipe, or the pipe is too short for a spiral between level turns.
    /// </exception>
    public SpiralLay(StraightPipe pipe, StripStock stock, SpiralSetting setting, SpiralEnds? ends = null, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        ArgumentNullException.ThrowIfNull(stock);
        this.pipe = pipe;
        this.Stock = stock;
        this.Ends = ends ?? SpiralEnds.TrimmedFlush;
        this.Choices = choices ?? LayChoices.Default;
        this.Geometry = new SpiralGeometry(pipe.OutsideDiameter, stock.Width, setting);
        if (this.Ends.LevelTurnsAtEachEnd > 0)
        {
            SpiralSettingCheck.AcceptPipe(pipe, this.Geometry.Solution);
        }

        this.strips = this.Cut(default(NoSteps), out int layers);
        this.LayersEverywhere = layers;
    }

    /// <summary>The pipe.</summary>
    public StraightPipe Pipe => this.pipe;

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>Angle, advance and laps.</summary>
    public SpiralGeometry Geometry { get; }

    /// <summary>What is done at the ends.</summary>
    public SpiralEnds Ends { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>
    /// How often the strip goes round the pipe in one pass, counted along its middle from end to end; level turns and trim are not
    /// in it.
    /// </summary>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.TurnsFlush))]
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.TurnsLevel))]
    public double Turns => this.Wind(this.Geometry.Solution, default(NoSteps));

    Surface ILay.Surface => this.pipe;

    /// <inheritdoc/>
    public StripCourse Course => this.Ends.LevelTurnsAtEachEnd == 0 ? StripCourse.Round : StripCourse.RoundWithEndLap;

    /// <inheritdoc/>
    public ValueList<Strip> Strips => this.strips;

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SpiralFormulas), nameof(SpiralFormulas.LayersOnAverage))]
    public AreaRatio LayersOnAverage => this.Ends.LevelTurnsAtEachEnd == 0
        ? AreaRatio.FromRatio(this.Choices.Passes * this.Geometry.Solution.LayersOnAverage) // exact, without whole micrometres
        : this.strips.OnAverage(this.pipe);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"spiral, true lap {this.Geometry.Solution.TrueLapMm:0.#} mm, {(this.Ends.LevelTurnsAtEachEnd == 0 ? "ends trimmed flush" : $"{this.Ends.LevelTurnsAtEachEnd} level turn(s) at each end")}, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Mark the pipe {this.Geometry.Solution.AdvanceMm:0.0} mm apart along its axis. {(this.Choices.Method == ApplicationMethod.WrappingHead ? "Set the wrapping head to the outside diameter; after one turn the same wheel must land on the second mark." : "After one turn the same edge must land on the second mark.")} Lap across the strip {this.Geometry.Solution.TrueLapMm:0.0} mm, angle {this.Geometry.Solution.AngleDegrees:0.0} deg.{(this.Ends.LevelTurnsAtEachEnd == 0 ? " Run the slanted ends past the pipe and trim them flush." : string.Create(CultureInfo.InvariantCulture, $" Close each end with {this.Ends.LevelTurnsAtEachEnd} level turn(s), lapped {this.Choices.EndLapMm:0.#} mm on itself."))}{this.Choices.Repeated}");

    /// <summary>
    /// The spiral, and the level turns at both ends. Where a spiral ends square at level turns, its place reaches as far as
    /// the longer side of its end, so that no level turn is credited with steel that the spiral may cover.
    /// </summary>
    public ValueList<PlacedStrip> PlaceStrips()
    {
        SpiralSolution spiral = this.Geometry.Solution;
        double height = this.pipe.LengthMm;
        double along = spiral.WidthMm / spiral.Cosine;
        int turns = this.Ends.LevelTurnsAtEachEnd;
        if (turns == 0)
        {
            double lean = height + along;
            return StripPlacing.EachPass(this.Choices.Passes, [new(-along, along, 0, lean / spiral.Tangent, true, lean)]);
        }

        double square = spiral.WidthMm * spiral.Sine;
        double from = -square * spiral.Tangent;
        double reach = height - along - (2 * from);
        double ring = spiral.CircumferenceMm + this.Choices.EndLapMm;
        return StripPlacing.EachPass(this.Choices.Passes,
        [
            new(from, along, -square, reach / spiral.Tangent, true, reach),
            .. Enumerable.Repeat(new StripPlacing.Band(0, spiral.WidthMm, 0, ring, true), turns),
            .. Enumerable.Repeat(new StripPlacing.Band(height - spiral.WidthMm, spiral.WidthMm, 0, ring, true), turns),
        ]);
    }

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        SpiralSolution spiral = this.Geometry.Solution;
        if (rules[RuleIds.MinimumLap].Judge(new Measure(spiral.TrueLapMm, TradeUnit.Millimeter), subject) is { } lap)
        {
            yield return lap;
        }

        if (rules[RuleIds.MaximumSpiralAngle].Judge(new Measure(spiral.AngleDegrees, TradeUnit.Degree), subject) is { } angle)
        {
            yield return angle;
        }

        if (this.Choices.Method == ApplicationMethod.WrappingHead
            && rules[RuleIds.MaximumStripWidthOnWrappingHead].Judge(Measure.Of(this.Stock.Width), subject) is { } width)
        {
            yield return width;
        }

        if (this.Ends.LevelTurnsAtEachEnd > 0
            && rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) is { } endLap)
        {
            yield return endLap;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Geometry.Solve(steps);
        _ = this.Cut(steps, out _);
        return steps.Under("Spiral lay on " + this.pipe.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private ValueList<Strip> Cut<TSteps>(TSteps steps, out int layersEverywhere)
        where TSteps : struct, IStepRecorder
    {
        SpiralSolution spiral = this.Geometry.Solution;
        int turns = this.Ends.LevelTurnsAtEachEnd;
        int body = SpiralKernel.LayersInBody(spiral, this.Choices.WanderMm, steps);
        _ = TSteps.Records ? this.Wind(spiral, steps) : 0;
        layersEverywhere = SpiralKernel.LayersEverywhere(this.Choices.Passes, body, turns, steps);
        return turns == 0 ? this.CutFlush(spiral, steps) : this.CutLevel(spiral, turns, steps);
    }

    private double Wind<TSteps>(in SpiralSolution spiral, TSteps steps)
        where TSteps : struct, IStepRecorder => this.Ends.LevelTurnsAtEachEnd == 0
            ? SpiralKernel.TurnsFlush(spiral, this.pipe.LengthMm, steps)
            : SpiralKernel.TurnsBetweenLevelTurns(spiral, this.pipe.LengthMm, steps);

    private ValueList<Strip> CutFlush<TSteps>(in SpiralSolution spiral, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = SpiralKernel.StripFlushMm(spiral, this.pipe.LengthMm, steps);
        double cover = spiral.CircumferenceMm * this.pipe.LengthMm / spiral.WidthMm;
        return [Strip.Computed(this.Stock, strip, this.Choices.Passes, StripPurpose.Spiral, true, cover, SpiralKernel.TrimMm(spiral))];
    }

    private ValueList<Strip> CutLevel<TSteps>(in SpiralSolution spiral, int turns, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double height = this.pipe.LengthMm;

        // What the square ends leave bare is two wedges, one under the level turns of each end; of a level turn only
        // that wedge is cover, the rest of it laps on the spiral. Further turns on the same end are lap altogether.
        double strip = SpiralKernel.StripBetweenLevelTurnsMm(spiral, height, steps);
        double wedge = SpiralKernel.EndWedgeMm2(spiral) / spiral.WidthMm;
        double cover = (spiral.CircumferenceMm * height / spiral.WidthMm) - (2 * wedge);
        double turn = spiral.CircumferenceMm + this.Choices.EndLapMm;
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.LevelTurn, [spiral.CircumferenceMm, this.Choices.EndLapMm], turn);
        }

        int passes = this.Choices.Passes;
        var cut = new List<Strip>(3)
        {
            Strip.Computed(this.Stock, strip, passes, StripPurpose.Spiral, true, cover, 0),
            Strip.Computed(this.Stock, turn, 2 * passes, StripPurpose.LevelTurn, false, wedge, 0),
        };
        if (turns > 1)
        {
            cut.Add(Strip.Computed(this.Stock, turn, 2 * passes * (turns - 1), StripPurpose.LevelTurn, false, 0, 0));
        }

        return new ValueList<Strip>(cut);
    }
}
