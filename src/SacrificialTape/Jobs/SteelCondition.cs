using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>What the survey found of the steel: metal, paint, temperature, wet or dry, level or upright.</summary>
/// <remarks>Service temperature: -60 to 400 degC.</remarks>
public sealed record SteelCondition
{
    private readonly StoredNumber serviceDegC;

    /// <summary>Describes the steel.</summary>
    /// <param name="metal">The metal under the tape.</param>
    /// <param name="windowsInPaint">The contact windows where sound paint stays under the tape; null where the steel is bare.</param>
    /// <param name="serviceTemperature">Highest temperature of the surface in service, if known.</param>
    /// <param name="wetInService">Whether the surface is wet at that temperature.</param>
    /// <param name="orientation">How the line runs.</param>
    /// <param name="hazards">What round it can harm people, zinc or steel; left out: nothing known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SteelCondition(
        SubstrateMetal metal = SubstrateMetal.CarbonSteel,
        ContactWindows? windowsInPaint = null,
        Temperature? serviceTemperature = null,
        bool wetInService = false,
        LineOrientation orientation = LineOrientation.Horizontal,
        LineHazards? hazards = null)
    {
        this.Metal = Enum.IsDefined(metal)
            ? metal
            : throw new ArgumentOutOfRangeException(nameof(metal), metal, "Not a metal known here.");
        this.WindowsInPaint = windowsInPaint;
        this.WetInService = wetInService;
        this.Orientation = Enum.IsDefined(orientation)
            ? orientation
            : throw new ArgumentOutOfRangeException(nameof(orientation), orientation, "Not an orientation known here.");
        this.Hazards = hazards ?? LineHazards.None;
        if (serviceTemperature is { } given)
        {
            this.serviceDegC = new StoredNumber(AcceptedRange.Between(-60, 400, "degC")
                .Check(UnitConversions.DegreesCelsius(given), nameof(serviceTemperature)));
        }
    }

    /// <summary>Bare carbon steel, level, nothing known of its temperature.</summary>
    public static SteelCondition Bare { get; } = new();

    /// <summary>The metal under the tape.</summary>
    public SubstrateMetal Metal { get; }

    /// <summary>The contact windows where paint stays under the tape; null where the steel is bare.</summary>
    public ContactWindows? WindowsInPaint { get; }

    /// <summary>Highest temperature of the surface in service, if known.</summary>
    public Temperature? ServiceTemperature =>
        this.serviceDegC.IsSet ? Temperature.FromDegreesCelsius(this.serviceDegC.Bare) : null;

    /// <summary>Whether the surface is wet at that temperature.</summary>
    public bool WetInService { get; }

    /// <summary>How the line runs.</summary>
    public LineOrientation Orientation { get; }

    /// <summary>What round it can harm people, zinc or steel.</summary>
    public LineHazards Hazards { get; }

    /// <summary>What was found, in a few words.</summary>
    public override string ToString() => $"{this.Metal}, {this.WindowsInPaint?.ToString() ?? "bare"}, {this.Orientation}{(this.serviceDegC.IsSet ? $", {MeasureText.Write(this.serviceDegC.Bare, TradeUnit.DegreeCelsius, 6)}{(this.WetInService ? " wet" : string.Empty)}" : string.Empty)}{(this.Hazards.Any ? $", {this.Hazards}" : string.Empty)}";
}
