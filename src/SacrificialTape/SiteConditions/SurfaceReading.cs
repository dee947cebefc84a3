using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>What was measured and seen of a surface before tape is laid on it; what was not is left out.</summary>
/// <remarks>
/// Surface and service temperature: -60 to 400 degC. Times: zero or more. Nothing that is left out is ever taken as good:
/// <see cref="SurfaceReadiness"/> then says that readiness cannot be said.
/// </remarks>
public sealed record SurfaceReading
{
    private readonly StoredNumber surface;
    private readonly StoredNumber service;
    private readonly StoredNumber salts;
    private readonly StoredNumber dryHours;
    private readonly StoredNumber dwellHours;

    /// <summary>Describes a surface.</summary>
    /// <param name="air">The air at the surface.</param>
    /// <param name="surfaceTemperature">Temperature of the surface while laying.</param>
    /// <param name="serviceTemperature">Highest temperature of the surface in service.</param>
    /// <param name="wetness">Whether it is dry.</param>
    /// <param name="dryFor">How long it has been dry.</param>
    /// <param name="dwellBeforeWet">How long it will stay dry after laying.</param>
    /// <param name="cleaning">How clean it is.</param>
    /// <param name="flashRust">Rust after water jetting; asked for after a Wa grade only.</param>
    /// <param name="dust">Dust on it.</param>
    /// <param name="residues">What was found on it of oil, wax, silicone and bitumen; an empty list when it was looked for and none found.</param>
    /// <param name="salts">Soluble salts on it.</param>
    /// <param name="profile">Its profile; asked for after Sa 2 1/2 and Sa 3 only.</param>
    /// <param name="paint">What paint is left.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SurfaceReading(
        MoistAir? air = null,
        Temperature? surfaceTemperature = null,
        Temperature? serviceTemperature = null,
        SurfaceWetness? wetness = null,
        Duration? dryFor = null,
        Duration? dwellBeforeWet = null,
        CleaningGrade? cleaning = null,
        FlashRust? flashRust = null,
        DustRating? dust = null,
        IEnumerable<SurfaceResidue>? residues = null,
        AreaDensity? salts = null,
        SurfaceProfile? profile = null,
        PaintSoundness? paint = null)
    {
        ValueList<SurfaceResidue>? allResidues = residues?.Listed();
        this.Air = air;
        this.surface = Stored(surfaceTemperature, nameof(surfaceTemperature));
        this.service = Stored(serviceTemperature, nameof(serviceTemperature));
        this.Wetness = Known(wetness, nameof(wetness));
        this.dryHours = Stored(dryFor, nameof(dryFor));
        this.dwellHours = Stored(dwellBeforeWet, nameof(dwellBeforeWet));
        this.Cleaning = Known(cleaning, nameof(cleaning));
        this.FlashRust = Known(flashRust, nameof(flashRust));
        this.Dust = dust;
        this.Residues = allResidues;
        foreach (SurfaceResidue residue in allResidues ?? [])
        {
            _ = Known<SurfaceResidue>(residue, nameof(residues));
        }

        this.salts = salts is { } given
            ? new StoredNumber(AcceptedRange.Between(0, 100_000, "mg/m2").Check(UnitConversions.MilligramsPerSquareMeter(given), nameof(salts)))
            : default;
        this.Profile = profile;
        this.Paint = Known(paint, nameof(paint));
    }

    /// <summary>The air at the surface.</summary>
    public MoistAir? Air { get; }

    /// <summary>Temperature of the surface while laying.</summary>
    public Temperature? SurfaceTemperature => this.surface.IsSet ? Temperature.FromDegreesCelsius(this.surface.Bare) : null;

    /// <summary>Highest temperature of the surface in service.</summary>
    public Temperature? ServiceTemperature => this.service.IsSet ? Temperature.FromDegreesCelsius(this.service.Bare) : null;

    /// <summary>Whether it is dry.</summary>
    public SurfaceWetness? Wetness { get; }

    /// <summary>How long it has been dry.</summary>
    public Duration? DryFor => this.dryHours.IsSet ? Duration.FromHours(this.dryHours.Bare) : null;

    /// <summary>How long it will stay dry after laying.</summary>
    public Duration? DwellBeforeWet => this.dwellHours.IsSet ? Duration.FromHours(this.dwellHours.Bare) : null;

    /// <summary>How clean it is.</summary>
    public CleaningGrade? Cleaning { get; }

    /// <summary>Rust after water jetting.</summary>
    public FlashRust? FlashRust { get; }

    /// <summary>Dust on it.</summary>
    public DustRating? Dust { get; }

    /// <summary>What was found on it; null when nobody looked.</summary>
    public ValueList<SurfaceResidue>? Residues { get; }

    /// <summary>Soluble salts on it.</summary>
    public AreaDensity? Salts => this.salts.IsSet ? AreaDensity.FromMilligramsPerSquareMeter(this.salts.Bare) : null;

    /// <summary>Its profile.</summary>
    public SurfaceProfile? Profile { get; }

    /// <summary>What paint is left.</summary>
    public PaintSoundness? Paint { get; }

    internal static AcceptedRange Temperatures => AcceptedRange.Between(-60, 400, "degC");

    internal StoredNumber SurfaceCelsius => this.surface;

    internal StoredNumber ServiceCelsius => this.service;

    internal StoredNumber SaltsMgM2 => this.salts;

    internal StoredNumber DryHours => this.dryHours;

    internal StoredNumber DwellHours => this.dwellHours;

    /// <summary>What was measured, as invariant text.</summary>
    public override string ToString()
    {
        string?[] parts =
        [
            this.Air?.ToString(),
            Said("surface", this.surface, TradeUnit.DegreeCelsius),
            Said("service", this.service, TradeUnit.DegreeCelsius),
            this.Wetness?.ToString(),
            Said("dry for", this.dryHours, TradeUnit.Hour),
            Said("dry after", this.dwellHours, TradeUnit.Hour),
            this.Cleaning is { } grade ? CleaningGrades.NameOf(grade) : null,
            this.FlashRust is { } rust ? $"flash rust {rust}" : null,
            this.Dust?.ToString(),
            this.Residues is { } found ? (found.Count == 0 ? "no residues" : string.Join(", ", found)) : null,
            Said("salts", this.salts, TradeUnit.MilligramPerSquareMeter),
            this.Profile?.ToString(),
            this.Paint is { } paint ? $"paint {paint}" : null,
        ];
        string text = string.Join("; ", parts.Where(static part => part is not null));
        return text.Length == 0 ? "nothing measured" : text;
    }

    private static string? Said(string name, StoredNumber value, TradeUnit unit) =>
        value.IsSet ? $"{name} {MeasureText.Write(value.Bare, unit, 6)}" : null;

    private static StoredNumber Stored(Temperature? given, string parameter) =>
        given is { } value ? new StoredNumber(Temperatures.Check(UnitConversions.DegreesCelsius(value), parameter)) : default;

    private static StoredNumber Stored(Duration? given, string parameter) =>
        given is { } value ? new StoredNumber(AcceptedRange.AtLeast(0, "h").Check(UnitConversions.Hours(value), parameter)) : default;

    private static T? Known<T>(T? given, string parameter)
        where T : struct, Enum =>
        given is { } value && !Enum.IsDefined(value)
            ? throw new ArgumentOutOfRangeException(parameter, value, "Not a value known here.")
            : given;
}
