using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>A flat face as a lay of parallel strips sees it.</summary>
/// <param name="Outline">Its edge, about its middle.</param>
/// <param name="Openings">Openings with a place; the hole of a ring is one of them.</param>
/// <param name="LooseMm2">Area of openings without a place.</param>
internal sealed record Face(FaceShape Outline, ValueList<FaceShape> Openings, double LooseMm2)
{
    /// <summary>A panel seen along its strips.</summary>
    internal static Face Of(Panel panel, PanelDirection direction)
    {
        bool turned = direction == PanelDirection.AlongHeight;
        var placed = new List<FaceShape>();
        FaceShape outline = panel switch
        {
            RectangularPanel one => Turned(false, 0, 0, UnitConversions.Millimeters(one.Width), UnitConversions.Millimeters(one.Height), turned),
            CircularPanel one => FaceShape.Circle(UnitConversions.Millimeters(one.Diameter)),
            AnnularPanel one => FaceShape.Circle(UnitConversions.Millimeters(one.OutsideDiameter)),
            _ => throw new ArgumentException($"No lay is known for {panel.Description}.", nameof(panel)),
        };
        if (panel is AnnularPanel ring)
        {
            placed.Add(FaceShape.Circle(UnitConversions.Millimeters(ring.InsideDiameter)));
        }

        double loose = 0;
        foreach (PanelOpening opening in panel.Openings)
        {
            if (opening.IsPlaced)
            {
                placed.Add(Turned(opening.IsRound, opening.RightMm, opening.UpMm, opening.WidthMm, opening.HeightMm, turned));
            }
            else
            {
                loose += opening.Count * opening.WidthMm * opening.HeightMm * (opening.IsRound ? Math.PI / 4 : 1);
            }
        }

        return new(outline, new ValueList<FaceShape>(placed), loose);
    }

    /// <summary>A flat ring with bolt holes, whose places do not matter.</summary>
    internal static Face Ring(double outsideMm, double insideMm, int holes, double holeMm) =>
        new(FaceShape.Circle(outsideMm), [FaceShape.Circle(insideMm)], holes * Math.PI / 4 * holeMm * holeMm);

    /// <summary>A whole disc.</summary>
    internal static Face Disc(double diameterMm) => new(FaceShape.Circle(diameterMm), [], 0);

    private static FaceShape Turned(bool round, double right, double up, double width, double height, bool turned) =>
        turned ? new(round, up, right, height, width) : new(round, right, up, width, height);
}
