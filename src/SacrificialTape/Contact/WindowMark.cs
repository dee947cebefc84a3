using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>One window as the crew marks it.</summary>
public sealed record WindowMark
{
    private readonly StoredNumber alongMm;
    private readonly StoredNumber aroundMm;
    private readonly StoredNumber degrees;

    internal WindowMark(int number, ContactWindow window, double alongMm, double aroundMm, double? degrees)
    {
        this.Number = number;
        this.Window = window;
        this.alongMm = new StoredNumber(alongMm);
        this.aroundMm = new StoredNumber(aroundMm);
        if (degrees is { } given)
        {
            this.degrees = new StoredNumber(given);
        }
    }

    /// <summary>Its number, in the order of the walk.</summary>
    public int Number { get; }

    /// <summary>The window.</summary>
    public ContactWindow Window { get; }

    /// <summary>Its middle, along the surface from the start.</summary>
    public Length Along => Length.FromMillimeters(this.alongMm.Bare);

    /// <summary>Its middle, around from the named line, clockwise seen along the surface; on a panel up from the bottom.</summary>
    public Length Around => Length.FromMillimeters(this.aroundMm.Bare);

    /// <summary>The same place around as an angle; null on a panel.</summary>
    public Angle? Turned => this.degrees.IsSet ? Angle.FromDegrees(this.degrees.Bare) : null;

    /// <summary>The same place around on a clock face with the named line at 12:00, to five minutes; null on a panel.</summary>
    public string? Clock
    {
        get
        {
            if (!this.degrees.IsSet)
            {
                return null;
            }

            int minutes = (int)Math.Round(this.degrees.Bare * 2 / 5) * 5 % 720;
            return string.Create(CultureInfo.InvariantCulture, $"{(minutes < 60 ? 12 : minutes / 60)}:{minutes % 60:00}");
        }
    }

    /// <summary>The mark as a line for the crew.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Number}: {this.alongMm.Bare:0} mm along, {this.aroundMm.Bare:0} mm around{(this.Clock is { } clock ? $" ({clock}, {this.degrees.Bare:0} deg)" : string.Empty)}, {this.Window.Size}");
}
