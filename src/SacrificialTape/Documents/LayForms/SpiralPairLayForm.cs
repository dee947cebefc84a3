using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>How two spirals of opposite hand are read and written.</summary>
internal static class SpiralPairLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<SpiralPairLay>("spiral pair", Read, Write);

    private static SpiralPairLay? Read(FormReader reader)
    {
        StraightPipe pipe = reader.Surface<StraightPipe>("surface");
        SpiralLay first = Spiral(reader, "first", pipe);
        SpiralLay second = Spiral(reader, "second", pipe);
        SpiralHand firstHand = reader.Word("firstHand", JobWords.SpiralHands);
        bool secondFromOtherEnd = reader.Flag("secondFromOtherEnd");
        return reader.Make(() => new SpiralPairLay(first, second, firstHand, secondFromOtherEnd));
    }

    private static void Write(FormWriter writer, SpiralPairLay lay)
    {
        writer.Surface("surface", lay.First.Pipe);
        writer.Lay("first", lay.First, lay.First.Pipe);
        writer.Lay("second", lay.Second, lay.First.Pipe);
        writer.Word("firstHand", lay.FirstHand, JobWords.SpiralHands);
        writer.Flag("secondFromOtherEnd", lay.SecondFromOtherEnd);
    }

    private static SpiralLay Spiral(FormReader reader, string name, StraightPipe pipe)
    {
        ILay lay = reader.Lay(name, pipe);
        if (lay is not null and not SpiralLay)
        {
            reader.Context.Faults.Add(reader.Node.Members[name], "Expected a lay of kind 'spiral'.");
        }

        return (lay as SpiralLay)!;
    }
}
