using System.Globalization;

namespace SacrificialTape.Wrapping;

/// <summary>A number of strips as a whole number that, times any number of passes, can still be counted.</summary>
internal static class StripCount
{
    internal const int Most = 100_000_000;
    internal const int MostOneByOne = 100_000;

    /// <summary>Layers as a whole number; more than a million come of a lap that leaves next to no strip.</summary>
    internal static int Layers(double layers, double leastLap) => layers <= 1_000_000
        ? (int)layers
        : throw new ArgumentOutOfRangeException(nameof(leastLap), string.Create(
            CultureInfo.InvariantCulture, $"A lap of {leastLap:0.######} mm makes {layers:0} layers, more than the 1000000 that are counted: it must be smaller."));

    /// <summary>Widths and laps in mm; the error names the argument of the lay that the lap came from.</summary>
    internal static int Whole(double count, double widthMm, double leastLap) => count <= Most
        ? (int)count
        : throw new ArgumentOutOfRangeException(nameof(leastLap), string.Create(
            CultureInfo.InvariantCulture,
            $"A lap of {leastLap:0.######} mm on a strip {widthMm:0.######} mm wide takes {count:0} strips, more than the {Most} that are counted: the lap must be smaller."));

    /// <summary>Strips that are cut to a line one by one: their number is kept to what anyone would lay.</summary>
    internal static int OneByOne(double count, double widthMm, double leastLap) => count <= MostOneByOne
        ? (int)count
        : throw new ArgumentOutOfRangeException(nameof(leastLap), string.Create(
            CultureInfo.InvariantCulture,
            $"A lap of {leastLap:0.######} mm on a strip {widthMm:0.######} mm wide takes {count:0} strips that are cut one by one, more than the {MostOneByOne} that are counted: the lap must be smaller, or the strip wider."));
}
