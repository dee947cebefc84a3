using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>Design current demand of bare steel offshore: at the start, on the mean and at the end of the life.</summary>
/// <remarks>
/// Mean for the mass of anodes, start and end for their number. <see cref="Published"/>: class rules by region; the two
/// northern rows were paired from a flattened table. <see cref="Of"/>: by depth and climate.
/// </remarks>
public sealed record MarineDemand
{
    private readonly StoredNumber initial;
    private readonly StoredNumber mean;
    private readonly StoredNumber final;

    private MarineDemand(string region, double initial, double mean, double final, Basis? basis = null)
    {
        this.Basis = basis ?? GalvanicSources.MarineByRegion;
        this.Region = region;
        this.initial = new StoredNumber(initial / 1000);
        this.mean = new StoredNumber(mean / 1000);
        this.final = new StoredNumber(final / 1000);
    }

    /// <summary>The published rows, in mA/m2 at the start, on the mean and at the end.</summary>
    public static ValueList<MarineDemand> Published { get; } =
    [
        new("North Sea north of 62 N", 220, 100, 130),
        new("North Sea 55 to 62 N", 180, 90, 120),
        new("North Sea south of 55 N", 150, 80, 100),
        new("Arabian Gulf, Africa, Brazil, China, India", 130, 70, 90),
        new("Mediterranean, Western Australia, Gulf of Mexico, Adriatic, US West Coast", 110, 60, 80),
        new("Cook Inlet", 400, 400, 400),
        new("sea-bed mud", 25, 20, 20),
    ];

    /// <summary>Where.</summary>
    public string Region { get; }

    /// <summary>At the start.</summary>
    public ElectricCurrentDensity Initial => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.initial.Bare);

    /// <summary>On the mean.</summary>
    public ElectricCurrentDensity Mean => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.mean.Bare);

    /// <summary>At the end.</summary>
    public ElectricCurrentDensity Final => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.final.Bare);

    /// <summary>How it is known.</summary>
    public Basis Basis { get; }

    /// <summary>
    /// The demand by depth and climate of an offshore code (recalled, check before use). It disagrees with the published
    /// rows by region, mostly upwards: hold both beside one another.
    /// </summary>
    /// <param name="depth">Depth below the surface, zero or more; a bound belongs to the shallower band.</param>
    /// <param name="zone">Climate by the temperature of the surface water.</param>
    /// <exception cref="ArgumentOutOfRangeException">The depth is negative, or there is no such zone.</exception>
    public static MarineDemand Of(Length depth, ClimateZone zone)
    {
        double metres = AcceptedRange.AtLeast(0, "m").Check(UnitConversions.Millimeters(depth) / 1000, nameof(depth));
        if (!Enum.IsDefined(zone))
        {
            throw new ArgumentOutOfRangeException(nameof(zone), zone, "Not a climate zone known here.");
        }

        int band = 0;
        while (WithAllowance.Above(metres, MarineDemandTable.DeepestMetres[band]))
        {
            band++;
        }

        (double initial, double mean, double final) = MarineDemandTable.Amperes[band][(int)zone];
        return new($"{MarineDemandTable.Depths[band]}, {zone}", initial * 1000, mean * 1000, final * 1000, GalvanicSources.MarineByDepth);
    }

    /// <summary>Region and demands in a few words.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"{this.Region}: {this.initial.Bare * 1000:G4}, {this.mean.Bare * 1000:G4}, {this.final.Bare * 1000:G4} mA/m2");
}
