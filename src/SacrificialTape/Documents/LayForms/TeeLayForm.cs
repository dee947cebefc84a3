using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay of rings on a tee is read and written.</summary>
internal static class TeeLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<TeeLay>("tee rings", Read, Write);

    private static TeeLay? Read(FormReader reader)
    {
        Tee tee = reader.Surface<Tee>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        Length saddleLap = reader.Length("saddleLap");
        LayChoices choices = reader.Choices("choices");
        LayWork.Charge(reader, tee is null ? null : (2 * tee.RunCentreToEnd) + tee.BranchCentreToEnd, stock, leastLap, LayWork.OnTee);
        return reader.Make(() => new TeeLay(tee!, stock, leastLap, saddleLap, choices));
    }

    private static void Write(FormWriter writer, TeeLay lay)
    {
        writer.Surface("surface", lay.Tee);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Length("saddleLap", lay.SaddleLap);
        writer.Choices("choices", lay.Choices);
    }
}
