using SacrificialTape.Quantities;

namespace SacrificialTape.SiteConditions;

/// <summary>Dust by the tape test of ISO 8502-3: how much by pictures, and how large the particles are.</summary>
/// <remarks>Quantity 0 to 5. Size class 0 (not seen at ten times) to 5 (above 2.5 mm); class 2 is 50 to 100 um.</remarks>
public sealed record DustRating
{
    /// <summary>Describes a rating.</summary>
    /// <param name="quantity">Quantity rating, 0 to 5.</param>
    /// <param name="sizeClass">Class of the largest particles that are common on it, 0 to 5.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside 0 to 5.</exception>
    public DustRating(int quantity, int sizeClass)
    {
        AcceptedRange.Between(0, 5, string.Empty).Check(quantity);
        AcceptedRange.Between(0, 5, string.Empty).Check(sizeClass);
        this.Quantity = quantity;
        this.SizeClass = sizeClass;
    }

    /// <summary>Quantity rating.</summary>
    public int Quantity { get; }

    /// <summary>Class of particle size.</summary>
    public int SizeClass { get; }

    /// <summary>Both numbers.</summary>
    public override string ToString() => FormattableString.Invariant($"dust {this.Quantity}, size class {this.SizeClass}");
}
