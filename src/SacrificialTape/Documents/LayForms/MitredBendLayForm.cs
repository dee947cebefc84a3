using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay of rings on a mitred bend is read and written.</summary>
internal static class MitredBendLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<MitredBendLay>("mitred bend rings", Read, Write);

    private static MitredBendLay? Read(FormReader reader)
    {
        MitredBend bend = reader.Surface<MitredBend>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        Length weldLap = reader.Length("weldLap");
        LayChoices choices = reader.Choices("choices");
        LayWork.Charge(reader, bend?.PieceOutside, stock, leastLap, LayWork.OnMitre);
        return reader.Make(() => new MitredBendLay(bend!, stock, leastLap, weldLap, choices));
    }

    private static void Write(FormWriter writer, MitredBendLay lay)
    {
        writer.Surface("surface", lay.Bend);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Length("weldLap", lay.WeldLap);
        writer.Choices("choices", lay.Choices);
    }
}
