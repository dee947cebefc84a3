using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a strip folded over an edge is read and written. Sides that are alike are left out.</summary>
internal static class EdgeLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<EdgeLay>("edge", Read, Write);

    private static EdgeLay? Read(FormReader reader)
    {
        Surface edge = reader.SurfaceAmong("surface", typeof(SheetEdge), typeof(WindowOpening));
        StripStock stock = reader.Stock("stock");
        ValueList<SideLength> sides = reader.List("sides", SideLength.Read);
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => edge switch
        {
            SheetEdge sheet => EdgeLay.OfSheet(sheet, stock, sides.Count == 0 ? null : new ValueList<Length>(sides.Select(static side => side.Length)), choices),
            WindowOpening opening => sides.Count == 0
                ? EdgeLay.OfOpening(opening, stock, choices)
                : throw FormReader.Refused("sides", "The sides of an opening follow from its size."),
            _ => throw FormReader.Refused("surface", $"No edge is known of {edge.Description}. Expected sheet edge, window opening."),
        });
    }

    private static void Write(FormWriter writer, EdgeLay lay)
    {
        writer.Surface("surface", lay.Edge);
        writer.Stock("stock", lay.Stock);
        if (lay.Edge is SheetEdge edge && lay.SidesMm.Any(side => !side.Equals(edge.LengthMm / lay.SidesMm.Count)))
        {
            writer.List("sides", [.. lay.SidesMm.Select(static mm => new SideLength(Length.FromMillimeters(mm)))], SideLength.Write);
        }

        writer.Choices("choices", lay.Choices);
    }
}
