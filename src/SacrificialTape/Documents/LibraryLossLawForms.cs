namespace SacrificialTape.Documents;

/// <summary>The loss laws of the library: every one has a form, held by a test.</summary>
internal static class LibraryLossLawForms
{
    internal static IEnumerable<LossLawForm> All() => [LinearLossForm.Form, PowerLawLossForm.Form, PiecewiseLossForm.Form, MeasuredLossForm.Form];
}
