using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/surfaces-panels-and-sections.md quotes.</summary>
public static class SurfacesPanelsAndSectionsPage
{
    public static void Panels()
    {
        #region panels
        Length width = Length.FromMeters(2);
        Length height = Length.FromMeters(1.2);
        PanelOpening manway = PanelOpening.Circular(Length.FromMillimeters(500)).At(Length.FromMillimeters(-400), Length.Zero);
        PanelOpening holes = PanelOpening.Circular(Length.FromMillimeters(22), 12);
        Surface[] surfaces =
        [
            new RectangularPanel(width, height),
            new RectangularPanel(width, height, [manway, holes]),
            new AnnularPanel(Length.FromMillimeters(800), Length.FromMillimeters(500)),
            new CorrugatedPanel(
                Length.FromMillimeters(200), Length.FromMillimeters(60), Length.FromMillimeters(80),
                Length.FromMillimeters(40), 10, Length.FromMeters(6)),
        ];
        foreach (Surface surface in surfaces)
        {
            Console.WriteLine($"{surface.Description}: {surface.Area.SquareMeters:0.0000} m2");
        }
        #endregion
    }

    public static void Sections()
    {
        #region sections
        Length meter = Length.FromMeters(1);
        foreach (string designation in new[] { "IPE 200", "UPN 200", "L 100 x 100 x 10", "SHS 100 x 100 x 5 cold", "SHS 100 x 100 x 5 hot" })
        {
            Section section = SectionSizes.Find(designation).OfLength(meter);
            Console.WriteLine($"{designation}: outline {section.Perimeter.Millimeters:0.0} mm, {section.Area.SquareMeters:0.0000} m2/m [{section.SizeBasis!.Kind}]");
        }

        Console.WriteLine($"DN 80 post: {CircularHollowSection.FromInside(Length.FromMillimeters(80), Length.FromMillimeters(4.5), meter).Area.SquareMeters:0.0000} m2/m");
        #endregion
    }

    public static void Folds()
    {
        #region folds
        Section angle = SectionSizes.Find("L 100 x 100 x 10").OfLength(Length.FromMeters(1));
        foreach (Fold fold in angle.Folds)
        {
            Console.WriteLine(fold);
        }
        #endregion
    }
}
