using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>How contact windows at their places are read and written: on the surface of the line, unless another is stated.</summary>
internal static class WindowLayoutForm
{
    internal static WindowLayout? Read(FormReader reader)
    {
        Surface surface = reader.Surface<Surface>("surface");
        ValueList<ContactWindow> windows = reader.List("at", ContactWindowForm.Read);

        reader.CountSteps(Pairs(windows));
        return reader.Make(() => new WindowLayout(
            UnrolledSurface.TryUnroll(surface, out UnrolledSurface? unrolled)
                ? unrolled
                : throw FormReader.Refused("surface", $"No unrolled form is known for {surface.Description}: windows there are given by count only."),
            windows));
    }

    internal static void Write(FormWriter writer, WindowLayout layout)
    {
        writer.Surface("surface", layout.Surface.Surface);
        writer.List("at", layout.Windows, ContactWindowForm.Write);
    }

    // Windows are held against those beside them along the surface: few in a lattice, all of them in one row.
    private static double Pairs(ValueList<ContactWindow> windows)
    {
        double[] from = [.. windows.Select(static window => window.AlongMm - (window.LengthMm / 2)).Order()];
        double longest = windows.Count == 0 ? 0 : windows.Max(static window => window.LengthMm);
        double pairs = windows.Count;
        int end = 0;
        for (int i = 0; i < from.Length; i++)
        {
            while (end < from.Length && from[end] < from[i] + longest)
            {
                end++;
            }

            pairs += end - i - 1;
        }

        return pairs;
    }
}
