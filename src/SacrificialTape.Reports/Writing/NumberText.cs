using System.Globalization;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Reports.Writing;

/// <summary>Numbers as the reader wants them: rounded and in the reader's units here and nowhere else.</summary>
internal sealed class NumberText(CultureInfo culture, ReportUnits units)
{
    // Past two centuries a life is arithmetic, no forecast.
    private const double LongestLife = 200;

    private bool Us => units == ReportUnits.UsCustomary;

    internal string Long => this.Us ? "ft" : "m";

    internal string Short => this.Us ? "in" : "mm";

    internal string Thin => this.Us ? "mil" : "um";

    internal string Square => this.Us ? "ft2" : "m2";

    internal string Heavy => this.Us ? "lb" : "kg";

    internal string Number(double number, int decimals) => number.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), culture);

    internal string Number(decimal number, int decimals) => number.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), culture);

    internal string Count(long number) => number.ToString("N0", culture);

    internal double LongNumber(Length length) => this.Us ? length.Feet : length.Meters;

    internal string Metres(Length length) => this.Number(this.LongNumber(length), 1);

    internal string Millimetres(Length length) => this.Us ? this.Number(length.Inches, 3) : this.Number(length.Millimeters, 1);

    internal string Micrometres(Length length) => this.Us ? this.Number(length.Mils, 2) : this.Number(length.Micrometers, 0);

    internal string Area(Area area) => this.Number(this.Us ? area.SquareFeet : area.SquareMeters, 2);

    internal string Mass(Mass mass) => this.Number(this.Us ? mass.Pounds : mass.Kilograms, 1);

    internal string Percent(double fraction) => this.Number(100 * fraction, 0) + " %";

    internal string Years(Lifetime life) => life switch
    {
        { IsUnlimited: true } => "no end",
        { Duration.Days: > LongestLife * 365 } => "over " + this.Number(LongestLife, 0),
        _ => this.Number(life.Duration.Days / 365, 1),
    };

    internal string Day(DateOnly day) => culture.Equals(CultureInfo.InvariantCulture)
        ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        : day.ToString("d MMMM yyyy", culture);

    internal string Amount(Costing.Money money, int digits) => this.Number(money.Rounded(digits).Amount, digits) + " " + money.Currency;
}
