using SacrificialTape.Costing;
using SacrificialTape.Provenance;

namespace SacrificialTape.Inspection;

/// <summary>What patching costs, by the user's own norms: nothing is built in.</summary>
/// <remarks>One currency, each amount zero or more.</remarks>
public sealed record RepairPrices
{
    /// <summary>States the prices.</summary>
    /// <param name="once">Paid once: access, permit, travel.</param>
    /// <param name="perPatch">Work and material of one patch.</param>
    /// <param name="perSquareMeter">Besides, for each square metre of patch.</param>
    /// <exception cref="ArgumentException">Two currencies are mixed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An amount is negative.</exception>
    public RepairPrices(Money once, Money perPatch, Money perSquareMeter)
    {
        this.Once = once.Price(nameof(once));
        this.PerPatch = once.Same(perPatch.Price(nameof(perPatch)));
        this.PerSquareMeter = once.Same(perSquareMeter.Price(nameof(perSquareMeter)));
    }

    /// <summary>Paid once.</summary>
    public Money Once { get; }

    /// <summary>For each patch.</summary>
    public Money PerPatch { get; }

    /// <summary>For each square metre of patch.</summary>
    public Money PerSquareMeter { get; }

    /// <summary>What a list of repairs costs.</summary>
    /// <param name="repairs">The repairs.</param>
    [BasisOf(typeof(PatchFormulas), nameof(PatchFormulas.RepairCost))]
    public Money Of(RepairList repairs)
    {
        ArgumentNullException.ThrowIfNull(repairs);
        return this.Once + (this.PerPatch * repairs.Repairs.Count) + this.PerSquareMeter.Times(repairs.PatchedM2);
    }

    /// <summary>The prices in a few words.</summary>
    public override string ToString() => $"{this.Once} once, {this.PerPatch} a patch, {this.PerSquareMeter} a square metre of patch";
}
