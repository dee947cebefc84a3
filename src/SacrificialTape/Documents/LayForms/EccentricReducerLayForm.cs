using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay along an eccentric reducer is read and written.</summary>
internal static class EccentricReducerLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<EccentricReducerLay>("along eccentric reducer", Read, Write);

    private static EccentricReducerLay? Read(FormReader reader)
    {
        EccentricReducer reducer = reader.Surface<EccentricReducer>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        LayWork.Charge(reader, reducer?.LargeEnd * Math.PI, stock, leastLap, LayWork.OnEccentric);
        return reader.Make(() => new EccentricReducerLay(reducer!, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, EccentricReducerLay lay)
    {
        writer.Surface("surface", lay.Reducer);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
