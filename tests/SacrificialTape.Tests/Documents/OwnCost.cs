using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A cost item of a host's own.</summary>
internal sealed record OwnCost(string Name, int Visits) : ICostItem
{
    internal static CostItemForm Form { get; } = CostItemForm.Of<OwnCost>(
        "visits",
        static reader =>
        {
            string name = reader.Text("name");
            int visits = reader.Count("visits");
            return reader.Make(() => new OwnCost(name, visits));
        },
        static (writer, cost) =>
        {
            writer.Text("name", cost.Name);
            writer.Count("visits", cost.Visits);
        });

    public Money Amount => new(100 * this.Visits, "EUR");

    public CostTiming Timing => CostTiming.Yearly;
}
