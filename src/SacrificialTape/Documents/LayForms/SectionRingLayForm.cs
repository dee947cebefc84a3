using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay of rings round a hollow section is read and written.</summary>
internal static class SectionRingLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<SectionRingLay>("section rings", Read, Write);

    private static SectionRingLay? Read(FormReader reader)
    {
        RectangularHollowSection section = reader.Surface<RectangularHollowSection>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new SectionRingLay(section, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, SectionRingLay lay)
    {
        writer.Surface("surface", lay.Section);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
