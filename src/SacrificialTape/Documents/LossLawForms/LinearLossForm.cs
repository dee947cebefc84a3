using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>How the linear law is read and written: there is only one.</summary>
internal static class LinearLossForm
{
    internal static LossLawForm Form { get; } = LossLawForm.Of<LinearLoss>("linear", static reader => reader.Make(static () => LinearLoss.Law), static (_, _) => { });
}
