using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay on a section is read and written.</summary>
internal static class SectionLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<SectionLay>("section", Read, Write);

    private static SectionLay? Read(FormReader reader)
    {
        // The outside of a circular one is laid as a pipe.
        var section = reader.SurfaceAmong("surface", typeof(AngleSection), typeof(Channel), typeof(ISection), typeof(RectangularHollowSection), typeof(TeeSection)) as Section;
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        SectionPattern pattern = reader.Word("pattern", JobWords.SectionPatterns);
        Length foldClearance = reader.Length("foldClearance");
        LayChoices choices = reader.Choices("choices");
        LayWork.Charge(reader, section?.Perimeter, stock, leastLap, LayWork.OnSection);
        return reader.Make(() => new SectionLay(section!, stock, leastLap, pattern, foldClearance, choices));
    }

    private static void Write(FormWriter writer, SectionLay lay)
    {
        writer.Surface("surface", lay.Section);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Word("pattern", lay.Pattern, JobWords.SectionPatterns);
        writer.Length("foldClearance", lay.FoldClearance);
        writer.Choices("choices", lay.Choices);
    }
}
