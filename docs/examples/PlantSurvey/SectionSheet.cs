using SacrificialTape.Surfaces;

namespace PlantSurvey;

/// <summary>Structural sections: sections.csv.</summary>
internal sealed class SectionSheet : FamilySheet
{
    internal SectionSheet()
        : base(
            new ShapeKind("listed", static cells => SectionSizes.Find(cells.Text("size")).OfLength(cells.Metres("length_m")))
            {
                Texts = ["size"],
                Numbers = ["length_m"],
                Lays = LayWords.Section,
            },
            new ShapeKind("I", static cells => new ISection(
                cells.Mm("height_mm"), cells.Mm("width_mm"), cells.Mm("web_mm"), cells.Mm("flange_mm"), cells.Mm("root_mm"), cells.Metres("length_m")))
            {
                Numbers = ["height_mm", "width_mm", "web_mm", "flange_mm", "root_mm", "length_m"],
                Lays = LayWords.Section,
            },
            new ShapeKind("channel", static cells => Channel.WithParallelFlanges(
                cells.Mm("height_mm"), cells.Mm("width_mm"), cells.Mm("web_mm"), cells.Mm("flange_mm"), cells.Mm("root_mm"), cells.Metres("length_m")))
            {
                Numbers = ["height_mm", "width_mm", "web_mm", "flange_mm", "root_mm", "length_m"],
                Lays = LayWords.Section,
            },
            new ShapeKind("angle", static cells => new AngleSection(
                cells.Mm("height_mm"), cells.Mm("width_mm"), cells.Mm("wall_mm"), cells.Mm("root_mm"), cells.MmOrNone("toe_mm"), cells.Metres("length_m")))
            {
                Numbers = ["height_mm", "width_mm", "wall_mm", "root_mm", "length_m"],
                OptionalNumbers = ["toe_mm"],
                Lays = LayWords.Section,
            },
            new ShapeKind("tee", static cells => new TeeSection(
                cells.Mm("height_mm"), cells.Mm("width_mm"), cells.Mm("web_mm"), cells.Mm("flange_mm"), cells.Mm("root_mm"), cells.Metres("length_m")))
            {
                Numbers = ["height_mm", "width_mm", "web_mm", "flange_mm", "root_mm", "length_m"],
                Lays = LayWords.Section,
            },
            new ShapeKind("hollow", static cells => RectangularHollowSection.FromOutside(
                cells.Mm("height_mm"), cells.Mm("width_mm"), cells.Mm("wall_mm"), cells.Mm("corner_mm"), cells.Metres("length_m")))
            {
                Numbers = ["height_mm", "width_mm", "wall_mm", "corner_mm", "length_m"],
                Lays = LayWords.Hollow,
            },
            new ShapeKind("tube", static cells => new StraightPipe(cells.Mm("outside_mm"), cells.Metres("length_m")))
            {
                Numbers = ["outside_mm", "length_m"],
                Lays = LayWords.Tube,
            })
    {
    }

    internal override string WorkOn(Surface surface) => "section";

    internal override string File => "sections.csv";
}
