using System.Globalization;
using System.Runtime.CompilerServices;

namespace SacrificialTape.Quantities;

/// <summary>
/// A range of accepted numbers in one unit. The check and the words of the error come from the same fields, so the two
/// cannot differ. Nothing outside is ever clamped.
/// </summary>
internal readonly struct AcceptedRange
{
    private readonly double low;
    private readonly double high;
    private readonly bool lowIncluded;
    private readonly bool highIncluded;
    private readonly string unit;
    private readonly string note;

    private AcceptedRange(double low, bool lowIncluded, double high, bool highIncluded, string unit, string note = "")
    {
        this.low = low;
        this.lowIncluded = lowIncluded;
        this.high = high;
        this.highIncluded = highIncluded;
        this.unit = unit;
        this.note = note;
    }

    internal static AcceptedRange Above(double low, string unit) => new(low, false, double.MaxValue, true, unit);

    internal static AcceptedRange AtLeast(double low, string unit) => new(low, true, double.MaxValue, true, unit);

    internal static AcceptedRange Between(double low, double high, string unit) => new(low, true, high, true, unit);

    /// <summary>Low excluded, high included: a share that must be something and can be all.</summary>
    internal static AcceptedRange AboveUpTo(double low, double high, string unit) => new(low, false, high, true, unit);

    /// <summary>Low included, high excluded.</summary>
    internal static AcceptedRange FromBelow(double low, double high, string unit) => new(low, true, high, false, unit);

    /// <summary>Both ends excluded.</summary>
    internal static AcceptedRange Inside(double low, double high, string unit) => new(low, false, high, false, unit);

    /// <summary>The same range, with a word on where it comes from or how to write it.</summary>
    internal AcceptedRange Noting(string note) =>
        new(this.low, this.lowIncluded, this.high, this.highIncluded, this.unit, $" ({note})");

    internal double Check(double value, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        this.Holds(value) ? value : throw this.Refuse(value, parameter);

    internal ArgumentOutOfRangeException Refuse(double value, string parameter)
    {
        string given = double.IsFinite(value)
            ? string.Create(CultureInfo.InvariantCulture, $"{value:0.############}{Spaced(this.unit)}")
            : "not a finite number";
        return new ArgumentOutOfRangeException(parameter, $"{given} is outside the accepted range: {this}{this.note}.");
    }

    public override string ToString()
    {
        var culture = CultureInfo.InvariantCulture;
        string tail = Spaced(this.unit);
        if (this.low == double.MinValue && this.high == double.MaxValue)
        {
            return "any finite number" + tail;
        }

        if (this.high == double.MaxValue)
        {
            return string.Create(culture, $"{(this.lowIncluded ? "at least" : "more than")} {this.low:0.######}{tail}");
        }

        return string.Create(culture, $"{(this.lowIncluded ? "at least" : "more than")} {this.low:0.######} and {(this.highIncluded ? "at most" : "less than")} {this.high:0.######}{tail}");
    }

    // Written so that NaN fails every comparison and is refused.
    private bool Holds(double value) =>
        (this.lowIncluded ? value >= this.low : value > this.low)
        && (this.highIncluded ? value <= this.high : value < this.high)
        && double.IsFinite(value);

    private static string Spaced(string unit) => unit.Length == 0 ? string.Empty : " " + unit;
}
