using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace PlantSurvey;

/// <summary>Edges, window openings, straps, columns and areas measured on site: details.csv.</summary>
internal sealed class DetailSheet : FamilySheet
{
    internal DetailSheet()
        : base(
            new ShapeKind("edge", static cells => new SheetEdge(
                cells.Metres("length_m"),
                cells.Mm("thickness_mm"),
                cells.Mm("front_mm"),
                cells.Mm("back_mm"),
                cells.Whole("corners"),
                cells.Whole("inside_corners")))
            {
                Numbers = ["length_m", "thickness_mm", "front_mm", "back_mm"],
                OptionalNumbers = ["corners", "inside_corners"],
                Lays = LayWords.Edge,
            },
            new ShapeKind("window", static cells => WindowOpening.Rectangular(
                cells.Mm("width_mm"), cells.Mm("height_mm"), cells.Mm("thickness_mm"), cells.Mm("front_mm"), cells.Mm("back_mm")))
            {
                Numbers = ["width_mm", "height_mm", "thickness_mm", "front_mm", "back_mm"],
                Lays = LayWords.Opening,
            },
            new ShapeKind("porthole", static cells => WindowOpening.Circular(
                cells.Mm("outside_mm"), cells.Mm("thickness_mm"), cells.Mm("front_mm"), cells.Mm("back_mm")))
            {
                Numbers = ["outside_mm", "thickness_mm", "front_mm", "back_mm"],
                Lays = LayWords.Opening,
            },
            new ShapeKind("strap", static cells => new PipeStrap(
                cells.Mm("outside_mm"),
                cells.Mm("width_mm"),
                cells.Mm("thickness_mm"),
                cells.Degrees("wrap_deg"),
                cells.MmOrNone("ends_mm"),
                StrapFaces.Outer))
            {
                Numbers = ["outside_mm", "width_mm", "thickness_mm", "wrap_deg"],
                OptionalNumbers = ["ends_mm"],
                Lays = LayWords.Strap,
            },
            new ShapeKind("column", static cells => new TaperedColumn(cells.Mm("outside_mm"), cells.Mm("top_mm"), cells.Metres("length_m")))
            {
                Numbers = ["outside_mm", "top_mm", "length_m"],
                Lays = LayWords.Round,
            },
            new ShapeKind("measured", static cells => new MeasuredArea(
                Area.FromSquareMeters(cells.Number("area_m2")), AreaAllowance.FromFraction(cells.Number("allowance_percent") / 100), cells.Text("note")))
            {
                Numbers = ["area_m2", "allowance_percent"],
                Texts = ["note"],
                Lays = LayWords.Measured,
            })
    {
    }

    internal override string WorkOn(Surface surface) => "detail";

    internal override string File => "details.csv";
}
