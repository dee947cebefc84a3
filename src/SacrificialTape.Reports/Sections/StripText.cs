using SacrificialTape.Reports.Writing;
using SacrificialTape.Tapes;

namespace SacrificialTape.Reports.Sections;

/// <summary>A strip in a few words.</summary>
internal static class StripText
{
    /// <summary>A strip by its name, where it has one, and its measures.</summary>
    internal static string Of(StripStock stock, JobPack pack, NumberText text) =>
        NameOf(stock, pack) is { } name ? $"{name}: {Of(stock, text)}" : Of(stock, text);

    internal static string? NameOf(StripStock stock, JobPack pack) => pack.Options.Stocks.FirstOrDefault(named => named.Stock.Equals(stock))?.Name;

    private static string Of(StripStock stock, NumberText text) =>
        $"{text.Micrometres(stock.Tape.Foil.Thickness)} {text.Thin} x {text.Millimetres(stock.Width)} {text.Short}{(stock.Tape.ConductsAtLaps ? string.Empty : ", facing film")}";
}
