using System.Globalization;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Voltage lost between zinc and steel at one window: in the adhesive, where the current spreads in the foil, and along the strip.</summary>
/// <remarks>
/// The whole current is taken to come from the far end of the strip and to be collected on the way as well; both at once is
/// more than there can be. Laps that the current crosses from strip to strip are not in it: the net of all strips has them, see
/// <see cref="ContactNetwork"/>. Area served: at least the contact, at most 1 km2.
/// </remarks>
public sealed record VoltageBudget : IHasWorkings
{
    private readonly StoredNumber contactCm2;
    private readonly StoredNumber servedM2;

    /// <summary>Describes a budget.</summary>
    /// <param name="path">The way along the strip to the window.</param>
    /// <param name="adhesive">Resistance of the adhesive.</param>
    /// <param name="contact">Area of the window that the strip touches; more than 0.</param>
    /// <param name="served">Covered area that this window serves.</param>
    /// <param name="demand">Current for each covered area.</param>
    /// <param name="driving">What drives the current.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public VoltageBudget(StripPath path, AdhesiveResistance adhesive, Area contact, Area served, TapeDemand demand, DrivingVoltage driving)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(adhesive);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(driving);
        this.Path = path;
        this.Adhesive = adhesive;
        this.Demand = demand;
        this.Driving = driving;
        double cm2 = AcceptedRange.Above(0, "cm2").Check(UnitConversions.SquareCentimeters(contact), nameof(contact));
        this.contactCm2 = new StoredNumber(cm2);
        this.servedM2 = new StoredNumber(AcceptedRange.Between(cm2 / 1e4, 1e6, "m2").Noting("at least the contact").Check(UnitConversions.SquareMeters(served), nameof(served)));
    }

    /// <summary>The way along the strip.</summary>
    public StripPath Path { get; }

    /// <summary>Resistance of the adhesive.</summary>
    public AdhesiveResistance Adhesive { get; }

    /// <summary>Current for each covered area.</summary>
    public TapeDemand Demand { get; }

    /// <summary>What drives the current.</summary>
    public DrivingVoltage Driving { get; }

    /// <summary>Area of the window that the strip touches.</summary>
    public Area Contact => Area.FromSquareCentimeters(this.contactCm2.Bare);

    /// <summary>Covered area that the window serves.</summary>
    public Area Served => Area.FromSquareMeters(this.servedM2.Bare);

    /// <summary>Current through the window.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.WindowCurrent))]
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(this.Solve(default(NoSteps)).Amperes);

    /// <summary>Lost in the adhesive.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Adhesive))]
    public ElectricPotential InAdhesive => ElectricPotential.FromVolts(this.Solve(default(NoSteps)).AdhesiveV);

    /// <summary>Lost where the current spreads in the foil.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.DiscToRing))]
    public ElectricPotential InSpreading => ElectricPotential.FromVolts(this.Solve(default(NoSteps)).SpreadV);

    /// <summary>Lost along the strip, by current from its far end and by what is collected on the way.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Strip))]
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Distributed))]
    public ElectricPotential InStrip => ElectricPotential.FromVolts(this.Solve(default(NoSteps)).StripV);

    /// <summary>Lost in all.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Total))]
    public ElectricPotential Lost => ElectricPotential.FromVolts(this.Solve(default(NoSteps)).TotalV);

    /// <summary>The budget of a lay at its worst: the smallest window, the least bare square metre, the farthest point.</summary>
    /// <param name="contact">The lay and its windows, at least one of them in every square metre.</param>
    /// <param name="sheet">The foil.</param>
    /// <param name="adhesive">Resistance of the adhesive.</param>
    /// <param name="demand">Current for each covered area.</param>
    /// <param name="driving">What drives the current.</param>
    /// <exception cref="ArgumentException">Some square metre has no bare steel, so that no window can be said to serve it.</exception>
    public static VoltageBudget Worst(LayContact contact, FoilSheet sheet, AdhesiveResistance adhesive, TapeDemand demand, DrivingVoltage driving)
    {
        ArgumentNullException.ThrowIfNull(contact);
        double ratio = contact.FindWorstMetre().Ratio.SquareCentimetersPerSquareMeter;
        if (ratio == 0 || contact.FindFarthest() is not { } farthest)
        {
            throw new ArgumentException("Some square metre has no bare steel: no window serves it.", nameof(contact));
        }

        double cm2 = contact.Layout.Windows.Min(static window => window.AreaMm2) / 100;
        double far = Math.Max(1, UnitConversions.Millimeters(farthest.AtMost));
        return new(
            new StripPath(sheet, Length.FromMillimeters(far), contact.Lay.Stock.Width),
            adhesive,
            Area.FromSquareCentimeters(cm2),
            Area.FromSquareMeters(cm2 / ratio),
            demand,
            driving);
    }

    /// <summary>Holds the voltage lost against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return VoltageRules.Judge(this.Solve(default(NoSteps)).TotalV, this.Driving, this.Adhesive, rules, subject);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double lost = this.Solve(steps).TotalV;
        if (this.Driving.Voltage.Volts > 0)
        {
            _ = VoltageKernel.SharePercent(lost, UnitConversions.Volts(this.Driving.Voltage), steps);
        }

        return steps.Under("Voltage lost between zinc and steel");
    }

    /// <summary>Voltage lost and what drives, in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Solve(default(NoSteps)).TotalV * 1000:G4} mV lost of {UnitConversions.Volts(this.Driving.Voltage) * 1000:G4} mV");

    private VoltageTerms Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => VoltageKernel.Budget(
            this.Path.Sheet.SquareOhm(steps),
            this.Demand.AmperesPerM2(steps),
            this.servedM2.Bare,
            this.Adhesive.OhmCm2,
            this.contactCm2.Bare,
            this.Path.LengthMm,
            this.Path.WidthMm,
            steps);
}
