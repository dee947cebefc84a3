using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How openings in a panel are read and written.</summary>
internal static class PanelOpeningForm
{
    internal static PanelOpening? Read(FormReader reader)
    {
        int count = reader.OptionalCount("count", 1);
        Length? right = reader.OptionalLength("right");
        Length? up = right is null && !reader.Has("up") ? null : reader.Length("up");
        if (up is not null && right is null)
        {
            right = reader.Length("right"); // its absence is the fault
        }

        if (reader.Has("diameter"))
        {
            Length diameter = reader.Length("diameter");
            return reader.Make(() => At(PanelOpening.Circular(diameter, count), right, up));
        }

        Length width = reader.Length("width");
        Length height = reader.Length("height");
        return reader.Make(() => At(PanelOpening.Rectangular(width, height, count), right, up));
    }

    internal static void Write(FormWriter writer, PanelOpening opening)
    {
        if (opening.IsRound)
        {
            writer.Length("diameter", opening.Width);
        }
        else
        {
            writer.Length("width", opening.Width);
            writer.Length("height", opening.Height);
        }

        if (opening.Count != 1)
        {
            writer.Count("count", opening.Count);
        }

        if (opening is { MiddleRight: { } right, MiddleUp: { } up })
        {
            writer.Length("right", right);
            writer.Length("up", up);
        }
    }

    /// <summary>Openings at their places are held against each other, pair by pair.</summary>
    internal static void Charge(FormReader reader, ValueList<PanelOpening> openings)
    {
        double placed = openings.Count(static opening => opening.IsPlaced);
        reader.CountSteps(placed * placed / 2);
    }

    private static PanelOpening At(PanelOpening opening, Length? right, Length? up) =>
        right is { } x && up is { } y ? opening.At(x, y) : opening;
}
