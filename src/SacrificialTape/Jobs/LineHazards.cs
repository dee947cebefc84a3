using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>What the survey found round a line that can harm people, zinc or steel. What is left out was not found, or not looked for.</summary>
/// <remarks>Tensile strength: 50 to 5000 MPa. Hazards stand in the order of <see cref="SiteHazard"/>, each once.</remarks>
public sealed record LineHazards
{
    private readonly StoredNumber strengthMpa;

    /// <summary>Describes what was found.</summary>
    /// <param name="present">The hazards; one that stands twice counts once.</param>
    /// <param name="acidity">pH of what wets the zinc, if known.</param>
    /// <param name="tensileStrength">Tensile strength of the steel, if known.</param>
    /// <param name="hardness">Hardness of the steel at its hardest, welds too, if known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LineHazards(
        IEnumerable<SiteHazard>? present = null,
        Acidity? acidity = null,
        Pressure? tensileStrength = null,
        VickersHardness? hardness = null)
    {
        this.Present = new ValueList<SiteHazard>((present ?? []).Distinct().Order());
        foreach (SiteHazard hazard in this.Present)
        {
            if (!Enum.IsDefined(hazard))
            {
                throw new ArgumentOutOfRangeException(nameof(present), hazard, "Not a hazard known here.");
            }
        }

        this.Acidity = acidity;
        this.Hardness = hardness;
        if (tensileStrength is { } strength)
        {
            this.strengthMpa = new StoredNumber(
                AcceptedRange.Between(50, 5000, "MPa").Check(UnitConversions.Megapascals(strength), nameof(tensileStrength)));
        }
    }

    /// <summary>Nothing found.</summary>
    public static LineHazards None { get; } = new();

    /// <summary>The hazards.</summary>
    public ValueList<SiteHazard> Present { get; }

    /// <summary>pH of what wets the zinc, if known.</summary>
    public Acidity? Acidity { get; }

    /// <summary>Tensile strength of the steel, if known.</summary>
    public Pressure? TensileStrength => this.strengthMpa.IsSet ? Pressure.FromMegapascals(this.strengthMpa.Bare) : null;

    /// <summary>Hardness of the steel, if known.</summary>
    public VickersHardness? Hardness { get; }

    internal bool Any => this.Present.Count > 0 || this.Acidity is not null || this.strengthMpa.IsSet || this.Hardness is not null;

    internal Measure? Strength => this.strengthMpa.IsSet ? new Measure(this.strengthMpa.Bare, TradeUnit.Megapascal) : null;

    /// <summary>Whether a hazard was found.</summary>
    /// <param name="hazard">The hazard.</param>
    public bool Has(SiteHazard hazard) => this.Present.Contains(hazard);

    /// <summary>What was found, in a few words.</summary>
    public override string ToString()
    {
        IEnumerable<string?> said = this.Present.Select(static hazard => hazard.ToString())
            .Append(this.Acidity?.ToString())
            .Append(this.Strength?.ToString())
            .Append(this.Hardness?.ToString());
        string text = string.Join(", ", said.OfType<string>());
        return text.Length == 0 ? "no hazards found" : text;
    }
}
