using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>The kinds of surface, lay, loss law and cost item that documents know: those of the library, and those a host states beside them.</summary>
/// <remarks>An explicit list, handed in with each call: nothing is registered globally, nothing is found by reflection.</remarks>
public sealed class DocumentForms
{
    /// <summary>States the forms of a host beside those of the library.</summary>
    /// <param name="surfaces">Own surfaces; may be left out.</param>
    /// <param name="lays">Own lays; may be left out.</param>
    /// <param name="costItems">Own cost items; may be left out.</param>
    /// <param name="lossLaws">Own loss laws; may be left out.</param>
    /// <param name="ownRules">The code for rules that the library does not know: a file holds the rules, never the code; may be left out.</param>
    /// <exception cref="ArgumentException">A kind or a type has two forms.</exception>
    public DocumentForms(
        IEnumerable<SurfaceForm>? surfaces = null,
        IEnumerable<LayForm>? lays = null,
        IEnumerable<CostItemForm>? costItems = null,
        IEnumerable<LossLawForm>? lossLaws = null,
        IEnumerable<IOwnRule>? ownRules = null)
    {
        this.Surfaces = new("surface", [.. LibrarySurfaceForms.All().Select(static form => form.Form), .. (surfaces ?? []).Select(static form => form.Form)]);
        this.Lays = new("lay", [.. LibraryLayForms.All().Select(static form => form.Form), .. (lays ?? []).Select(static form => form.Form)]);
        this.LossLaws = new("loss law", [.. LibraryLossLawForms.All().Select(static form => form.Form), .. (lossLaws ?? []).Select(static form => form.Form)]);
        this.OwnRules = new ValueList<IOwnRule>(ownRules ?? []);
        this.CostItems = new("cost item", [CostItemOwnForm.Form.Form, .. (costItems ?? []).Select(static form => form.Form)]);
    }

    /// <summary>The library's own.</summary>
    public static DocumentForms Library { get; } = new();

    internal FormTable<Surface> Surfaces { get; }

    internal FormTable<ILay> Lays { get; }

    internal FormTable<ICostItem> CostItems { get; }

    internal FormTable<ILossLaw> LossLaws { get; }

    internal ValueList<IOwnRule> OwnRules { get; }

    /// <summary>How many kinds are known.</summary>
    public override string ToString() => $"{this.Surfaces.Kinds.Count} kind(s) of surface, {this.Lays.Kinds.Count} of lay, {this.LossLaws.Kinds.Count} of loss law, {this.CostItems.Kinds.Count} of cost item";
}
