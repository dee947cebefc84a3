using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>The table of weld seams: every one has a form, held by a test. A host cannot add any, so there is one table.</summary>
internal static class LibraryWeldForms
{
    internal static FormTable<WeldSeam> Table { get; } = new("weld seam",
    [
        GirthWeldsForm.Form,
        LongitudinalWeldsForm.Form,
        FilletWeldsForm.Form,
        MitreWeldsForm.Form,
        PlateWeldsForm.Form,
        SaddleWeldsForm.Form,
    ]);
}
