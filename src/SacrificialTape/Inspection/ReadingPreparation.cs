using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>What was done to a sample of foil before it was measured. It is the user's own statement.</summary>
/// <remarks>
/// A micrometer reads corrosion products, adhesive and facing film as if they were zinc. White rust is bulkier than the zinc
/// it came from: a reading over it hides the loss. What is left on: zero to 1 mm on each layer.
/// </remarks>
public sealed record ReadingPreparation
{
    private readonly StoredNumber leftOnUm;

    /// <summary>States how samples were prepared.</summary>
    /// <param name="productsRemoved">Whether corrosion products were removed, by a way that spares the zinc.</param>
    /// <param name="leftOn">Thickness of adhesive and facing left on each layer, to be taken off the reading; zero when they came off.</param>
    /// <param name="note">How it was done.</param>
    /// <exception cref="ArgumentOutOfRangeException">What is left on is negative or more than 1 mm.</exception>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public ReadingPreparation(bool productsRemoved, Length leftOn, string note)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(note);
        this.ProductsRemoved = productsRemoved;
        this.leftOnUm = new StoredNumber(AcceptedRange.Between(0, 1000, "um").Check(UnitConversions.Micrometers(leftOn), nameof(leftOn)));
        this.Note = note;
    }

    /// <summary>Whether corrosion products were removed.</summary>
    public bool ProductsRemoved { get; }

    /// <summary>Thickness of adhesive and facing left on each layer.</summary>
    public Length LeftOn => Length.FromMicrometers(this.LeftOnUm);

    /// <summary>How it was done.</summary>
    public string Note { get; }

    internal double LeftOnUm => this.leftOnUm.Bare;

    /// <summary>The statement in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"corrosion products {(this.ProductsRemoved ? "removed" : "left on")}, {this.LeftOnUm:0.##} um of adhesive and facing taken off each layer: {this.Note}");
}
