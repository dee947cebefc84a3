using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using FsCheck.Xunit;
using SacrificialTape.Tests.Costing;
using SacrificialTape.Tests.Exposure;
using SacrificialTape.Tests.HouseRules;
using SacrificialTape.Tests.ServiceLife;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <summary>What the workings show can be worked out again by anyone, and comes to what the result says.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 150)]
public sealed partial class ShownWorkings
{
    [Property]
    public void Of_a_pipe(SpiralCase given)
    {
        StraightPipe pipe = Pipe(given.DiameterMm, given.HeightMm);
        Ends(Checked(pipe), pipe.Area.SquareMeters);
    }

    [Property]
    public void Of_a_spiral_by_each_convention(SpiralCase given)
    {
        var first = new SpiralGeometry(Mm(given.DiameterMm), Mm(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)));
        SpiralSetting[] settings =
        [
            first.Setting, given.OneLapAlongPipe ? SpiralSetting.FromLapAlongPipe(first.LapAlongPipe) : first.Setting, SpiralSetting.FromLapBetweenMarks(Mm(given.WidthMm * 0.3)),
            SpiralSetting.FromAdvance(first.Advance),
        ];
        foreach (SpiralSetting setting in settings)
        {
            var spiral = new SpiralGeometry(Mm(given.DiameterMm), Mm(given.WidthMm), setting);
            IReadOnlyDictionary<string, double> shown = Checked(spiral);
            Near.Equal(spiral.TrueAdvance.Millimeters, shown["e"], 1e-12);
            Near.Equal(spiral.Angle.Degrees, shown["theta"], 1e-12);
            Near.Equal(spiral.TrueLap.Millimeters, shown["o_true"], 1e-12, absolute: 1e-10);
            Near.Equal(spiral.LapAlongPipe.Millimeters, shown["o_axis"], 1e-12, absolute: 1e-9);
            Ends(shown, spiral.LayersOnAverage.Ratio);
            if (setting.Convention != LapConvention.Advance)
            {
                Near.Equal(spiral.Advance.Millimeters, shown["p"], 1e-12);
            }
        }
    }

    [Property]
    public void Of_a_spiral_lay(SpiralCase given)
    {
        foreach (SpiralEnds ends in new[] { SpiralEnds.TrimmedFlush, SpiralEnds.LevelTurns(given.LevelTurns) })
        {
            var lay = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), ends, Choices(2, 12, 2));
            IReadOnlyDictionary<string, double> shown = Checked(lay);
            Near.Equal(lay.LayersEverywhere, shown["n"], 0);
            Near.Equal(lay.Turns, shown["N"], 1e-12);
            string last = ends == SpiralEnds.TrimmedFlush ? "spiral.strip-flush" : "spiral.strip-between-level-turns";
            double strip = lay.ShowWorkings().Steps.Single(step => step.Formula.Id == last).Result.Number;
            Near.Equal(lay.Strips[0].Length.Millimeters, strip, 0, absolute: 0.000501);
            Near.Equal(lay.Strips[^1].Length.Millimeters, shown["L"], 0, absolute: 0.000501);
        }
    }

    [Property]
    public void Of_rings(SpanCase given)
    {
        var lay = new RingLay(Pipe(219.1, given.SpanMm), Stock(given.WidthMm), Mm(given.LapMm), Choices(1.5, 15, 3));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.Rings, shown["n"], 0);
        Near.Equal(lay.Strips[0].Length.Millimeters, shown["L"], 0, absolute: 0.000501);
        if (lay.Rings > 1)
        {
            Near.Equal(lay.Lap.Millimeters, shown["o_eq"], 1e-12);
            Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
        }
    }

    [Property]
    public void Of_strips_along(SpanCase given)
    {
        var lay = new AlongPipeLay(Pipe(given.SpanMm / Math.PI, 5000), Stock(given.WidthMm), Mm(given.LapMm), Choices(1.5, 15, 3));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.StripsRound, shown["n"], 0);
        Near.Equal(lay.Lap.Millimeters, shown["o_eq"], 1e-12);
        Ends(shown, lay.LayersEverywhere);
    }

    [Property]
    public void Of_bends(BendCase given)
    {
        Bend bend = given.Bend();
        Ends(Checked(bend), bend.Area.SquareMeters);
        var mitred = new MitredBend(bend.OutsideDiameter, bend.BendRadius, bend.Angle, 3);
        Ends(Checked(mitred), mitred.Area.SquareMeters);
        var lay = new BendRingLay(bend, Stock(given.WidthMm), Mm(given.LapMm), Choices(1.5, 15, 2));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.Rings, shown["n"], 0);
        Near.Equal(lay.OutsideLap.Millimeters, shown["o_out"], 1e-12);
        Near.Equal(lay.InsideLap.Millimeters, shown["o_in"], 1e-12);
        Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
        Near.Equal(lay.Pucker.Fraction, shown["e_out"], 1e-12);
        Near.Equal(lay.Stretch.Fraction, shown["e_in"], 1e-12);
    }

    [Property]
    public void Of_a_chart(SpanCase given)
    {
        ConsumptionChart chart = ConsumptionChart.Of([PipeSize.FromNps("6")], [Stock(given.WidthMm)], SpiralSetting.FromTrueLap(Mm(given.LapMm)));
        foreach (ChartCell cell in chart.Rows[0].Cells)
        {
            IReadOnlyDictionary<string, double> shown = Checked(cell);
            Near.Equal(cell.StripPerMeter.Millimeters, shown["L_1"], 1e-12);
            Near.Equal(cell.ZincPerMeter.Kilograms, shown["m"], 1e-12);
            Ends(shown, cell.PipePerRoll.Millimeters);
        }
    }

    [Property]
    public void Of_a_roll(SpanCase given)
    {
        var roll = new WoundRoll(Mm(76.2 + given.WidthMm), Mm(76.2), Mm(0.1 + (given.LapMm / 1000)));
        Ends(Checked(roll), roll.StripLength.Millimeters);
    }

    [Property]
    public void Of_a_life(LossCase given)
    {
        var least = CorrosionRate.FromMicrometersPerYear(given.Rate / 2);
        var exposure = ZincExposure.FromMeasurement(least, CorrosionRate.FromMicrometersPerYear(given.Rate), "a made-up coupon");
        ValueList<ILossLaw> laws = [LinearLoss.Law, new PowerLawLoss(TimeExponent.FromValue(given.Exponent)), PowerLawLoss.ZincUpper];
        var life = new LifeEstimate(new Foil(Mm(0.1), Mm(0.01)), 2, exposure, Utilisation.FromFraction(0.8), laws);
        _ = Checked(life);
        double[] all = [.. life.ShowWorkings().Steps.Where(static step => step.Formula.Id == "life.layers").Select(static step => step.Result.Number)];
        Assert.Equal(life.ByLaw.Select(static one => one.Earliest.Duration.Years365), all);
        Assert.Equal(life.Earliest.Duration.Years365, all.Min());
        Workings latest = life.ShowLatestWorkings();
        double[] late = [.. latest.Steps.Where(static step => step.Formula.Id == "life.layers").Select(static step => step.Result.Number)];
        Assert.Equal(life.ByLaw.Select(static one => one.Latest.Duration.Years365), late);
        Assert.Equal(life.Latest.Duration.Years365, late.Max());
        Assert.StartsWith("Latest life of the zinc in", latest.Title, StringComparison.Ordinal);
    }

    [Property]
    public void Of_bare_contact(SpanCase given)
    {
        var contact = new BareContact(Area.FromSquareMeters(given.SpanMm / 10), new ContactWindows((int)given.WidthMm, Area.FromSquareCentimeters(9)));
        Ends(Checked(contact), contact.Ratio.SquareCentimetersPerSquareMeter);
    }

    [Property]
    public void Of_a_take_off(CutCase given)
    {
        StockTakeOff stock = Cutting.TakeOff(given).Stocks.Single();
        IReadOnlyDictionary<string, double> shown = Checked(stock);
        Near.Equal(stock.LeastRolls, shown["N_min"], 0);
        Ends(Checked(stock.PlanCuts()), stock.LeastRolls);
        Near.Equal(stock.Ledger.Bought.Millimeters, shown["B"], 1e-12);
        Near.Equal(stock.Ledger.Offcut.Millimeters, shown["F"], 1e-12);
        Ends(shown, stock.ZincBought.Kilograms);
    }

    [Property(Arbitrary = [typeof(CostCases)])]
    public void Of_time_and_money(RateCase given)
    {
        IReadOnlyDictionary<string, double> shown = Checked(given.Value);
        Near.Equal(given.Value.SinglePaymentFactor, shown["v"], 0);
        Near.Equal(given.Value.SeriesFactor, shown["a"], 0);
        Near.Equal(given.Value.CapitalRecoveryFactor, shown["c"], 0);
    }

    [Property(Arbitrary = [typeof(CostCases)])]
    public void Of_an_option(OptionCase given)
    {
        RankedOption ranked = given.Priced(given.Make(later: given.Upkeep()));
        foreach (OptionCost cost in new[] { ranked.AtEarliestLife, ranked.AtLatestLife })
        {
            IReadOnlyDictionary<string, double> shown = Checked(cost);
            Near.Equal((double)cost.PresentWorth.Amount, shown["W_all"], 1e-12);
            Ends(shown, (double)cost.PerSquareMeterAndYear.Amount);
        }
    }

    [Property(Arbitrary = [typeof(CostCases)])]
    public void Of_a_comparison(OptionCase given, OptionCase other)
    {
        CostComparison comparison = new([given.Make("a", 1, given.Upkeep()), other.Make("b", 1, other.Upkeep())], given.Study, given.Discount);
        IReadOnlyDictionary<string, double> shown = Checked(comparison);
        Near.Equal((double)comparison.Ranking[1].AtEarliestLife.PerSquareMeterAndYear.Amount, shown["E"], 1e-12);
    }

    [Fact]
    public void Of_a_cost()
    {
        CostEstimate estimate = PricedJob.Full();
        IReadOnlyDictionary<string, double> shown = Checked(estimate);
        Near.Equal((double)estimate.FirstCost.Amount, shown["S"], 1e-12);
        Ends(shown, (double)estimate.FirstCostPerSquareMeter.Amount);
    }

    [Fact]
    public void Of_money_without_end()
    {
        TimeValue endless = new(DiscountRate.FromFractionPerYear(0.04), Lifetime.Unlimited);
        Near.Equal(25, Checked(endless)["a"], 1e-15);
    }

    [Fact]
    public void Of_no_layers_and_no_corrosion()
    {
        // A spiral may leave no layer everywhere, and a coupon may lose nothing.
        var exposure = ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(0), "indoors, nothing lost");
        var life = new LifeEstimate(new Foil(Mm(0.1)), 0, exposure, Utilisation.FromFraction(0.8));
        _ = Checked(life);
        Assert.Equal("0 a", life.Earliest.ToString());
    }

    [Fact]
    public void Of_nothing_lost_at_no_rate()
    {
        foreach (ILossLaw law in new ILossLaw[] { LinearLoss.Law, PowerLawLoss.ZincMean })
        {
            Workings workings = law.ShowTimeToLoss(CorrosionRate.FromMicrometersPerYear(0), Length.Zero);
            Assert.Equal("0 a", law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(0), Length.Zero).ToString());
            Assert.All(workings.Steps, static step => Assert.True(Recomputation.Agrees(step, Recomputation.Of(step)), step.ToString()));
        }
    }

    [Fact]
    public void Every_formula_is_shown_in_some_workings_or_named_by_a_calculation()
    {
        // The same cases as above, once each, so that this test stands alone: what other tests saw does not count.
        Seen.Clear();
        SeenTypes.Clear();
        var given = new SpiralCase(168.3, 100, 20, 12_000, 2);
        this.Of_a_pipe(given);
        this.Of_a_spiral_by_each_convention(given);
        this.Of_a_spiral_lay(given);
        this.Of_rings(new SpanCase(1000, 100, 10));
        this.Of_strips_along(new SpanCase(1000, 100, 10));
        this.Of_a_roll(new SpanCase(1000, 100, 10));
        this.Of_a_life(new LossCase(2, 10, 0.813));
        this.Of_a_life(new LossCase(0.1, 10, 0.813));
        this.Of_bare_contact(new SpanCase(1000, 100, 10));
        Of_contact_at_places();
        Of_voltage_lost();
        this.Of_a_take_off(new CutCase(20, 0.1, 10, 1000, [new PieceCase(1_000_000, 3, true, 900_000, 0)]));
        this.Of_a_take_off(new CutCase(10, 0, 10, 1000, [new PieceCase(3_400_000, 8, true, 3_400_000, 0)]));
        this.Of_fittings(new SpanCase(1000, 100, 10));
        this.Of_time_and_money(new RateCase(0.05, 20));
        this.Of_time_and_money(new RateCase(0, 20));
        this.Of_an_option(new OptionCase(0.05, 30, 8, 20, 1000, 10, 50, 5));
        this.Of_an_option(new OptionCase(0, 30, 8, 20, 1000, 10, 50, 5));
        this.Of_an_option(new OptionCase(0.05, 10, 20, 30, 1000, 10, 50, 5));
        this.Of_a_comparison(new OptionCase(0.05, 30, 8, 20, 1000, 10, 50, 5), new OptionCase(0.05, 30, 10, 25, 900, 10, 50, 5));
        this.Of_a_chart(new SpanCase(1000, 100, 10));
        this.Of_bends(new BendCase(168.3, 229, 90, 50, 10));
        this.Of_a_cost();
        this.Of_money_without_end();
        this.Of_panels(new SpanCase(1000, 100, 10));
        this.Of_sections(new SpanCase(1000, 100, 10));
        this.Of_edges_and_supports(new SpanCase(1000, 100, 10));
        this.Of_what_stays_clear(new SpanCase(1000, 100, 10));
        this.Of_bent_foil(new SpanCase(1000, 100, 10));
        this.Of_section_lays(SectionCases.Make(0, 300, 150, 0.4, 0.3, 6000));
        this.Of_edge_and_strap_lays(new SpanCase(1000, 100, 10));
        this.Of_edge_and_strap_lays(new SpanCase(20, 100, 10));
        this.Of_lays_on_panels(new PanelCase(2, 1000, 1000, 50, 10, 3, 4));
        this.Of_lays_on_large_and_folded_steel(new SpanCase(1000, 100, 10));
        this.Of_lays_on_large_and_folded_steel(new SpanCase(10, 300, 10));
        this.BendLaysOnce();
        this.InspectionOnce();
        this.Of_lays_on_surfaces_of_revolution(new RevolvedCase(0, 1000, 0.5, 25, 0.5, 0.1));
        this.Of_lays_on_surfaces_of_revolution(new RevolvedCase(6, 1000, 0.5, 0, 0.5, 0.1));
        this.Of_lays_on_a_cone_with_equal_ends();
        this.Of_a_dose_response(new SiteCase(10, 70, 10, 20));
        Of_humidity_and_dew_point();
        Of_salts();
        Of_sampling();
        this.Of_a_coupon(new CouponCase(0.1, 20, 720, 7.1, 0.001, 0.1));
        this.Of_a_life_along_a_curve(new CurveCase(2, [(1, 2), (20, 10)], 0.5));
        this.Of_zinc_beside_bare_steel(new LossCase(2, 10, 0.813));
        Of_charge_and_demand();
        Of_reach();
        Of_zinc_and_paint_together();
        Of_bounds_read_as_quantiles();
        for (int kind = 0; kind < 8; kind++)
        {
            this.Of_a_life_with_its_uncertainty(new SpreadCase(1.5, 0.3, 100, 0.1, 0.8, 0.1, 0.813, 0.03, 2, 0.9, kind));
        }

        // The others are named by the member that answers by them, whose answer shows no steps.
        string[] named =
        [
            .. from type in Library.Assembly.GetTypes()
               from member in type.GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static)
               from source in member.GetCustomAttributes<BasisOfAttribute>()
               let value = source.Catalogue.GetProperty(source.Formula, BindingFlags.Static | BindingFlags.NonPublic)?.GetValue(null)
               where value is Formula
               select ((Formula)value).Id,
        ];
        string[] unseen = [.. Library.Formulas.Select(static one => one.Formula.Id).Except(Seen.Keys).Order(StringComparer.Ordinal)];
        Assert.Empty(unseen.Except(named));
        Assert.Equal(NamedOnly, unseen);

        // Joined from results that are checked here one by one: see WorkingsOfEveryResult.
        Assert.Empty(WorkingsOfEveryResult.With.Except(WorkingsOfEveryResult.Joined).Except(SeenTypes.Keys).Select(static type => type.Name));
    }

    [Fact]
    public void The_check_sees_a_wrong_result()
    {
        WorkingStep right = Pipe().ShowWorkings().Steps[0];
        var wrong = new WorkingStep(right.Formula, right.Inputs, new Measure(right.Result.Number * 1.00000001, right.Result.Unit));
        Assert.True(Recomputation.Agrees(right, Recomputation.Of(right)));
        Assert.False(Recomputation.Agrees(wrong, Recomputation.Of(wrong)));
    }

    // One that comes to this list has lost its steps; one that leaves it is shown now. FormulasOfAnswers holds each to its member.
    internal static readonly string[] NamedOnly =
    [
        "bend.long-radius", "bend.short-radius", "clear.covered-area", "clear.spot-share", "contact.windows-needed",
        "design.layers", "dose.sulfur-deposition", "foil.smallest-bending-radius", "galvanic.anode-number",
        "galvanic.current-of-recession", "galvanic.mass-loss", "galvanic.other-reference", "galvanic.recession",
        "hot-dip.thickness", "life.log-normal-spread", "loss.linear", "loss.power", "loss.stretched", "loss.tangent",
        "rate.first-year", "rate.linear", "rate.power", "rate.stretched", "rate.tangent", "reach.linear-current",
        "reach.rest-resistance", "reach.tafel-current", "remaining.perforation-limit", "revolved.widest-for-pucker",
        "roll.layer-thickness", "strain.widest-for-pucker", "strain.widest-for-stretch", "tee.long-side",
        "tee.short-side", "weld-strip.reach", "weld.fillet-face",
    ];

    private static readonly ConcurrentDictionary<string, bool> Seen = new();
    private static readonly ConcurrentDictionary<Type, bool> SeenTypes = new();

    // Checks each step and returns the last number of each name.
    private static Dictionary<string, double> Checked(IHasWorkings result)
    {
        Workings workings = result.ShowWorkings();
        Assert.NotEmpty(workings.Steps);
        SeenTypes[result.GetType()] = true;
        var known = new Dictionary<string, Measure>(StringComparer.Ordinal);
        string[] lines = workings.ToString().Split('\n');
        string markdown = workings.ToMarkdown();
        Assert.Equal(workings.Steps.Count + 1, lines.Length);
        for (int at = 0; at < workings.Steps.Count; at++)
        {
            WorkingStep step = workings.Steps[at];
            Formula formula = step.Formula;
            Seen[formula.Id] = true;
            double recomputed = Recomputation.Of(step);
            Assert.True(Recomputation.Agrees(step, recomputed), string.Create(CultureInfo.InvariantCulture, $"{recomputed:R} from {step}"));
            Assert.Equal(formula.Result.Unit, step.Result.Unit);
            for (int i = 0; i < step.Inputs.Count; i++)
            {
                Assert.Equal(formula.Inputs[i].Unit, step.Inputs[i].Unit);
                if (known.TryGetValue(formula.Inputs[i].Name, out Measure earlier))
                {
                    Assert.Equal(earlier, step.Inputs[i]);
                }
            }

            Printed(lines[at + 1], step);
            Assert.Contains(formula.Tex, markdown, StringComparison.Ordinal);
            known[formula.Result.Name] = step.Result;
        }

        return known.ToDictionary(static one => one.Key, static one => one.Value.Number);
    }

    // A printed number is the exact one rounded to nine digits: half a unit in the ninth digit is 5e-9 of it at most.
    private static void Printed(string line, WorkingStep step)
    {
        string head = $"  {step.Formula.Result.Meaning}: {step.Formula} = ";
        Assert.StartsWith(head, line, StringComparison.Ordinal);
        string[] parts = line[head.Length..line.LastIndexOf("  [", StringComparison.Ordinal)].Split("  with ", 2);
        Rounded(step.Result, parts[0]);
        string[] inputs = parts[1].Split(", ");
        Assert.Equal(step.Inputs.Count, inputs.Length);
        for (int i = 0; i < inputs.Length; i++)
        {
            string name = step.Formula.Inputs[i].Name + " = ";
            Assert.StartsWith(name, inputs[i], StringComparison.Ordinal);
            Rounded(step.Inputs[i], inputs[i][name.Length..]);
        }

        Assert.EndsWith($"[{step.Formula.Basis}]", line, StringComparison.Ordinal);
    }

    private static void Rounded(Measure exact, string text)
    {
        Measure printed = Measure.Parse(text);
        Assert.Equal(exact.Unit, printed.Unit);
        Near.Equal(exact.Number, printed.Number, 5.0001e-9);
    }

    private static void Ends(IReadOnlyDictionary<string, double> shown, double property) =>
        Assert.Contains(shown.Values, value => Near.Same(value, property, 1e-12));
}
