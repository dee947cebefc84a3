namespace SacrificialTape.Costing;

/// <summary>A cost of the user's own: what, how much and when. A host adds its own kinds.</summary>
public interface ICostItem
{
    /// <summary>What it is.</summary>
    string Name { get; }

    /// <summary>How much each time; negative for a credit, for instance scrap at the end.</summary>
    Money Amount { get; }

    /// <summary>When it is paid.</summary>
    CostTiming Timing { get; }
}
