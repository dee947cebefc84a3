using System.Globalization;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Voltage lost anywhere in the net of strips, laps and windows, by Kirchhoff's laws.</summary>
/// <remarks>
/// <para>Each strip is cut into cells along its length; across it the foil is taken as one voltage, and where a window is
/// narrower than its strip the spreading from a disc of its width, or of equal area if that is larger, to the strip's width
/// is added. Laps conduct through the adhesive unless a facing film lies between. Every covered area sends current once, on
/// a bend by its area on the unrolled surface, which is more than there is. The steel conducts without loss.</para>
/// <para>The cells make it a little coarse: halve them and compare. Strips that reach no window carry no current and are
/// counted apart: see <see cref="JoinedStrips"/>. At most 200 000 cells a strip.</para>
/// </remarks>
public sealed record ContactNetwork : IHasWorkings
{
    private readonly StoredNumber cellMm;
    private readonly StoredNumber mostV;
    private readonly StoredNumber leastV;
    private readonly StoredNumber amperes;
    private readonly StoredNumber missed;

    /// <summary>Solves the net of strips at their places.</summary>
    /// <param name="strips">The strips, in the order they are laid.</param>
    /// <param name="layout">The windows.</param>
    /// <param name="lapsConduct">Whether laps conduct: not over a facing film.</param>
    /// <param name="sheet">The foil.</param>
    /// <param name="adhesive">Resistance of the adhesive.</param>
    /// <param name="demand">Current for each covered area.</param>
    /// <param name="cell">Length of a cell along a strip, more than 0; left out: 100 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cell is not above 0, or gives too many cells.</exception>
    public ContactNetwork(
        IEnumerable<PlacedStrip> strips,
        WindowLayout layout,
        bool lapsConduct,
        FoilSheet sheet,
        AdhesiveResistance adhesive,
        TapeDemand demand,
        Length? cell = null)
    {
        ValueList<PlacedStrip> allStrips = strips.Listed();
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(adhesive);
        ArgumentNullException.ThrowIfNull(demand);
        this.Layout = layout;
        this.Sheet = sheet;
        this.Adhesive = adhesive;
        this.Demand = demand;
        this.cellMm = new StoredNumber(AcceptedRange.AboveUpTo(0, 1e9, "mm").Check(UnitConversions.Millimeters(cell ?? Length.FromMillimeters(100)), nameof(cell)));
        var net = new StripNet(allStrips, layout, lapsConduct, sheet.SquareOhm(default(NoSteps)), adhesive.OhmCm2, this.cellMm.Bare);
        double[] voltages = net.Solve(demand.AmperesPerM2(default(NoSteps)), out double missedShare, out double total);
        int worst = -1;
        double least = double.MaxValue;
        var without = new HashSet<int>();
        for (int i = 0; i < voltages.Length; i++)
        {
            if (double.IsNaN(voltages[i]))
            {
                without.Add(net.StripOf(i));
                continue;
            }

            worst = worst < 0 || voltages[i] > voltages[worst] ? i : worst;
            least = Math.Min(least, voltages[i]);
        }

        this.Cells = net.Nodes;
        this.StripsWithoutSteel = without.Count;
        this.WorstStrip = worst < 0 ? null : allStrips[net.StripOf(worst)];
        this.mostV = new StoredNumber(worst < 0 ? 0 : voltages[worst]);
        this.leastV = new StoredNumber(worst < 0 ? 0 : least);
        this.amperes = new StoredNumber(total);
        this.missed = new StoredNumber(missedShare);
    }

    /// <summary>The windows.</summary>
    public WindowLayout Layout { get; }

    /// <summary>The foil.</summary>
    public FoilSheet Sheet { get; }

    /// <summary>Resistance of the adhesive.</summary>
    public AdhesiveResistance Adhesive { get; }

    /// <summary>Current for each covered area.</summary>
    public TapeDemand Demand { get; }

    /// <summary>Longest cell along a strip.</summary>
    public Length Cell => Length.FromMillimeters(this.cellMm.Bare);

    /// <summary>Cells of all strips.</summary>
    public int Cells { get; }

    /// <summary>Strips that reach no window: no voltage is worked out for them.</summary>
    public int StripsWithoutSteel { get; }

    /// <summary>The strip with the worst place; null where no strip reaches a window.</summary>
    public PlacedStrip? WorstStrip { get; }

    /// <summary>Largest voltage lost between zinc and steel anywhere.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.NetworkDrop))]
    public ElectricPotential MostLost => ElectricPotential.FromVolts(this.Most(default(NoSteps)));

    /// <summary>Current through all windows.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.WindowCurrent))]
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(this.amperes.Bare);

    /// <summary>How far the solution misses the balance of current at the worst cell, over the current through all windows.</summary>
    public double Missed => this.missed.Bare;

    /// <summary>Solves the net of a lay.</summary>
    /// <param name="contact">The lay and its windows; the lay knows the places of its strips.</param>
    /// <param name="sheet">The foil.</param>
    /// <param name="adhesive">Resistance of the adhesive.</param>
    /// <param name="demand">Current for each covered area.</param>
    /// <param name="cell">Length of a cell along a strip, more than 0; left out: 100 mm.</param>
    /// <exception cref="ArgumentException">The lay does not know the places of its strips.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The cell is not above 0, or gives too many cells.</exception>
    public static ContactNetwork Of(LayContact contact, FoilSheet sheet, AdhesiveResistance adhesive, TapeDemand demand, Length? cell = null)
    {
        ArgumentNullException.ThrowIfNull(contact);
        return contact.Lay is IPlacedStrips placed
            ? new(placed.PlaceStrips(), contact.Layout, contact.Lay.Stock.Tape.ConductsAtLaps, sheet, adhesive, demand, cell)
            : throw new ArgumentException($"The places of the strips are unknown: {contact.Lay.Description}.", nameof(contact));
    }

    /// <summary>Holds the voltage lost against the rules.</summary>
    /// <param name="driving">What drives the current.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(DrivingVoltage driving, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(driving);
        ArgumentNullException.ThrowIfNull(rules);
        if (this.StripsWithoutSteel > 0)
        {
            yield return rules[RuleIds.StripsWithoutSteel].State(subject, new Measure(this.StripsWithoutSteel, TradeUnit.One), new Measure(0, TradeUnit.One));
        }

        foreach (Finding finding in VoltageRules.Judge(this.mostV.Bare, driving, this.Adhesive, rules, subject))
        {
            yield return finding;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Sheet.SquareOhm(steps);
        _ = this.Demand.AmperesPerM2(steps);
        _ = this.Most(steps);
        return steps.Under("Voltage lost in the net of strips and windows");
    }

    /// <summary>Cells and largest voltage lost in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.mostV.Bare * 1000:G4} mV lost at most, {this.amperes.Bare * 1000:G4} mA through {this.Layout.Windows.Count} window(s), {this.Cells} cell(s)");

    private double Most<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => VoltageKernel.MostV(this.mostV.Bare, this.leastV.Bare, steps);
}
