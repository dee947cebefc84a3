using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>A lay that can say where each of its strips lies on the unrolled surface.</summary>
/// <remarks>A lay without this interface does not know the places: whoever needs them says so and guesses nothing.</remarks>
public interface IPlacedStrips
{
    /// <summary>Every strip of every pass with its place, in the order of the description of the lay.</summary>
    ValueList<PlacedStrip> PlaceStrips();
}
