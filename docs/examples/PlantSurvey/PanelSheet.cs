using SacrificialTape.Surfaces;

namespace PlantSurvey;

/// <summary>Flat and corrugated panels: panels.csv.</summary>
internal sealed class PanelSheet : FamilySheet
{
    internal PanelSheet()
        : base(
            new ShapeKind("rectangle", static cells => new RectangularPanel(cells.Mm("width_mm"), cells.Mm("height_mm"), OpeningList.OfPanel(cells)))
            {
                Numbers = ["width_mm", "height_mm"],
                OptionalTexts = ["openings"],
                Lays = LayWords.Panel,
            },
            new ShapeKind("disc", static cells => new CircularPanel(cells.Mm("outside_mm"), OpeningList.OfPanel(cells)))
            {
                Numbers = ["outside_mm"],
                OptionalTexts = ["openings"],
                Lays = LayWords.Panel,
            },
            new ShapeKind("ring", static cells => new AnnularPanel(cells.Mm("outside_mm"), cells.Mm("inside_mm"), OpeningList.OfPanel(cells)))
            {
                Numbers = ["outside_mm", "inside_mm"],
                OptionalTexts = ["openings"],
                Lays = LayWords.Panel,
            },
            new ShapeKind("corrugated", static cells => new CorrugatedPanel(
                cells.Mm("pitch_mm"),
                cells.Mm("crown_mm"),
                cells.Mm("valley_mm"),
                cells.Mm("depth_mm"),
                cells.Whole("corrugations"),
                cells.Mm("height_mm"),
                cells.MmOrNone("flat_mm")))
            {
                Numbers = ["pitch_mm", "crown_mm", "valley_mm", "depth_mm", "corrugations", "height_mm"],
                OptionalNumbers = ["flat_mm"],
                Lays = LayWords.Corrugated,
            })
    {
    }

    internal override string WorkOn(Surface surface) => "panel";

    internal override string File => "panels.csv";
}
