using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>What was read at a window or a strip: its resistance to the steel, the voltage between foil and steel, or both.</summary>
/// <remarks>
/// Resistance: zero or more. Voltage: its size counts, read while the current flows. Small resistances need four leads, and
/// a reading with the meter's own current says nothing of polarised metal under a wet film.
/// </remarks>
public sealed record ContactReading
{
    private readonly StoredNumber ohm;
    private readonly StoredNumber volt;

    /// <summary>Notes a reading.</summary>
    /// <param name="place">The window or strip.</param>
    /// <param name="resistance">Its resistance to the steel, if read.</param>
    /// <param name="foilToSteel">The voltage between foil and steel, if read.</param>
    /// <exception cref="ArgumentException">The place is empty, or nothing was read.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative, or the voltage over 10 V.</exception>
    public ContactReading(string place, ElectricResistance? resistance = null, ElectricPotential? foilToSteel = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        if (resistance is null && foilToSteel is null)
        {
            throw new ArgumentException($"Nothing was read at {place}.", nameof(resistance));
        }

        this.Place = place;
        if (resistance is { } read)
        {
            this.ohm = new StoredNumber(AcceptedRange.AtLeast(0, "ohm").Check(UnitConversions.Ohms(read), nameof(resistance)));
        }

        if (foilToSteel is { } between)
        {
            this.volt = new StoredNumber(AcceptedRange.Between(-10, 10, "V").Check(UnitConversions.Volts(between), nameof(foilToSteel)));
        }
    }

    /// <summary>The window or strip.</summary>
    public string Place { get; }

    /// <summary>Its resistance to the steel, if read.</summary>
    public ElectricResistance? Resistance => this.ohm.IsSet ? ElectricResistance.FromOhms(this.ohm.Bare) : null;

    /// <summary>The voltage between foil and steel, if read.</summary>
    public ElectricPotential? FoilToSteel => this.volt.IsSet ? ElectricPotential.FromVolts(this.volt.Bare) : null;

    /// <summary>Holds readings against the rules; that no bonding limit is one of corrosion is said once.</summary>
    /// <param name="readings">The readings.</param>
    /// <param name="driving">What drives the current, for voltages read.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public static IEnumerable<Finding> Judge(IEnumerable<ContactReading> readings, DrivingVoltage driving, RuleSet rules, string subject)
    {
        ValueList<ContactReading> allReadings = readings.Listed();
        ArgumentNullException.ThrowIfNull(driving);
        ArgumentNullException.ThrowIfNull(rules);
        foreach (ContactReading reading in allReadings)
        {
            string where = $"{subject} ({reading.Place})";
            if (reading.ohm.IsSet
                && rules[RuleIds.MaximumContactResistance].Judge(new Measure(reading.ohm.Bare * 1000, TradeUnit.Milliohm), where) is { } high)
            {
                yield return high;
            }

            if (reading.volt.IsSet)
            {
                foreach (Finding finding in VoltageRules.Judge(Math.Abs(reading.volt.Bare), driving, null, rules, where))
                {
                    yield return finding;
                }
            }
        }

        if (allReadings.Any(static reading => reading.ohm.IsSet))
        {
            yield return rules[RuleIds.BondingLimits].State(subject);
        }
    }

    /// <summary>Place and readings in a few words.</summary>
    public override string ToString() => this.Place
        + (this.ohm.IsSet ? ", " + MeasureText.Write(this.ohm.Bare * 1000, TradeUnit.Milliohm, 6) : string.Empty)
        + (this.volt.IsSet ? ", " + MeasureText.Write(this.volt.Bare * 1000, TradeUnit.Millivolt, 6) : string.Empty);
}
