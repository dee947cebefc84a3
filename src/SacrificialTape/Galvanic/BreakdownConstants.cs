using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>How much of a painted surface is bare at the start, and how much more each year.</summary>
/// <remarks>Both 0 to 1. Editions of the standard differ, so the edition stands in the name.</remarks>
public sealed record BreakdownConstants
{
    private readonly StoredNumber initial;
    private readonly StoredNumber yearly;

    private BreakdownConstants(string name, double initial, double yearly, Basis basis)
    {
        this.Name = name;
        this.initial = new StoredNumber(AcceptedRange.Between(0, 1, "").Check(initial));
        this.yearly = new StoredNumber(AcceptedRange.Between(0, 1, "").Noting("more each year").Check(yearly));
        this.Basis = basis;
    }

    /// <summary>DNV-RP-B401 2005 and 2010, category I to 30 m: one epoxy layer of 20 um or more; 0.10 and 0.10 (recalled).</summary>
    public static BreakdownConstants CategoryOneShallow { get; } = Dnv("I, 0 to 30 m", 0.10, 0.10);

    /// <summary>The same below 30 m; 0.10 and 0.05 (recalled).</summary>
    public static BreakdownConstants CategoryOneDeep { get; } = Dnv("I, below 30 m", 0.10, 0.05);

    /// <summary>DNV-RP-B401 2005 and 2010, category II to 30 m: marine paint of 250 um or more; 0.05 and 0.025 (recalled).</summary>
    public static BreakdownConstants CategoryTwoShallow { get; } = Dnv("II, 0 to 30 m", 0.05, 0.025);

    /// <summary>The same below 30 m; 0.05 and 0.015 (recalled).</summary>
    public static BreakdownConstants CategoryTwoDeep { get; } = Dnv("II, below 30 m", 0.05, 0.015);

    /// <summary>DNV-RP-B401 2005 and 2010, category III to 30 m: two or more layers of 350 um or more; 0.02 and 0.012 (recalled).</summary>
    public static BreakdownConstants CategoryThreeShallow { get; } = Dnv("III, 0 to 30 m", 0.02, 0.012);

    /// <summary>The same below 30 m; 0.02 and 0.008 (recalled).</summary>
    public static BreakdownConstants CategoryThreeDeep { get; } = Dnv("III, below 30 m", 0.02, 0.008);

    /// <summary>Name and edition.</summary>
    public string Name { get; }

    /// <summary>Bare share at the start.</summary>
    public double Initial => this.initial.Bare;

    /// <summary>Bare share more each year.</summary>
    public double Yearly => this.yearly.Bare;

    /// <summary>How they are known.</summary>
    public Basis Basis { get; }

    /// <summary>Constants of the user's own.</summary>
    /// <param name="initial">Bare share at the start, 0 to 1.</param>
    /// <param name="yearly">Bare share more each year, 0 to 1.</param>
    /// <param name="note">What was seen, where and when.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static BreakdownConstants FromExperience(double initial, double yearly, string note) =>
        new("own", initial, yearly, Basis.OwnExperience(note));

    private static BreakdownConstants Dnv(string category, double initial, double yearly) =>
        new($"DNV-RP-B401 2005/2010, {category}", initial, yearly, Basis.From(References.DnvCathodicProtection));

    /// <summary>Name and constants in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Name}: {this.Initial:0.####}, {this.Yearly:0.####} a year");
}
