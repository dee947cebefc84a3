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

        // Windows are held against each other, in the worst case pair by pair.
        reader.Charge((double)windows.Count * windows.Count / 2);
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
}
