using SacrificialTape.Reports.Writing;
using SacrificialTape.Tapes;

namespace SacrificialTape.Reports.Sections;

/// <summary>A strip in a few words.</summary>
internal static class StripText
{
    internal static string Of(StripStock stock, NumberText text) =>
        $"foil {text.Micrometres(stock.Tape.Foil.Thickness)} {text.Thin}, {text.Millimetres(stock.Width)} {text.Short} wide{(stock.Tape.ConductsAtLaps ? string.Empty : ", facing film")}";
}
