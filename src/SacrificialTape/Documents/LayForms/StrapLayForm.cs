using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay on a pipe strap is read and written.</summary>
internal static class StrapLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<StrapLay>("strap", Read, Write);

    private static StrapLay? Read(FormReader reader)
    {
        PipeStrap strap = reader.Surface<PipeStrap>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new StrapLay(strap, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, StrapLay lay)
    {
        writer.Surface("surface", lay.Strap);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
