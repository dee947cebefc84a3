using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A lay whose strips are folded over edges: the sharpest of them is held against the foil.</summary>
internal interface IFolds
{
    /// <summary>The smallest radius of the steel that a strip is folded over; zero where an edge is sharp.</summary>
    Length SmallestFoldRadius { get; }
}
