using SacrificialTape.Reports.Writing;
using SacrificialTape.Tapes;

namespace SacrificialTape.Reports.Sections;

/// <summary>A strip in a few words.</summary>
internal static class StripText
{
    internal static string Of(StripStock stock, NumberText text) =>
        $"{text.Micrometres(stock.Tape.Foil.Thickness)} {text.Thin} x {text.Millimetres(stock.Width)} {text.Short}{(stock.Tape.ConductsAtLaps ? string.Empty : ", facing film")}";
}
