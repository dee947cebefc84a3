using SacrificialTape.Costing;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>The kinds of surface, lay and cost item that documents know: those of the library, and those a host states beside them.</summary>
/// <remarks>An explicit list, handed in with each call: nothing is registered globally, nothing is found by reflection.</remarks>
public sealed class DocumentForms
{
    /// <summary>States the forms of a host beside those of the library.</summary>
    /// <param name="surfaces">Own surfaces; may be left out.</param>
    /// <param name="lays">Own lays; may be left out.</param>
    /// <param name="costItems">Own cost items; may be left out.</param>
    /// <exception cref="ArgumentException">A kind or a type has two forms.</exception>
    public DocumentForms(
        IEnumerable<SurfaceForm>? surfaces = null, IEnumerable<LayForm>? lays = null, IEnumerable<CostItemForm>? costItems = null)
    {
        this.Surfaces = new("surface", [.. LibrarySurfaceForms.All().Select(static form => form.Form), .. (surfaces ?? []).Select(static form => form.Form)]);
        this.Lays = new("lay", [.. LibraryLayForms.All().Select(static form => form.Form), .. (lays ?? []).Select(static form => form.Form)]);
        this.CostItems = new("cost item", [CostItemOwnForm.Form.Form, .. (costItems ?? []).Select(static form => form.Form)]);
    }

    /// <summary>The library's own.</summary>
    public static DocumentForms Library { get; } = new();

    internal FormTable<Surface> Surfaces { get; }

    internal FormTable<ILay> Lays { get; }

    internal FormTable<ICostItem> CostItems { get; }

    /// <summary>How many kinds are known.</summary>
    public override string ToString() => $"{this.Surfaces.Kinds.Count} kind(s) of surface, {this.Lays.Kinds.Count} of lay, {this.CostItems.Kinds.Count} of cost item";
}
