using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/surfaces-edges-and-supports.md quotes.</summary>
public static class SurfacesEdgesAndSupportsPage
{
    public static void Edges()
    {
        #region edges
        Length sheet = Length.FromMillimeters(8);
        Length reach = Length.FromMillimeters(40);
        Surface[] surfaces =
        [
            new SheetEdge(Length.FromMeters(4), sheet, reach, reach),
            SheetEdge.AroundRectangle(Length.FromMeters(2), Length.FromMeters(1), sheet, reach, reach),
            WindowOpening.Rectangular(Length.FromMillimeters(500), Length.FromMillimeters(300), sheet, reach, reach),
            WindowOpening.Circular(Length.FromMillimeters(600), sheet, reach, reach),
        ];
        foreach (Surface surface in surfaces)
        {
            Console.WriteLine($"{surface.Description}: {surface.Area.SquareMeters:0.0000} m2");
        }
        #endregion
    }

    public static void Supports()
    {
        #region supports
        var strap = new PipeStrap(
            Length.FromMillimeters(168.3), Length.FromMillimeters(50), Length.FromMillimeters(6),
            Angle.FromDegrees(180), Length.FromMillimeters(120), StrapFaces.Both);
        var plate = new BasePlate(Length.FromMillimeters(700), Length.FromMillimeters(600), Length.FromMillimeters(25), 4, Length.FromMillimeters(28));
        var column = new TaperedColumn(Length.FromMillimeters(400), Length.FromMillimeters(250), Length.FromMeters(3), plate);
        var measured = new MeasuredArea(
            Area.FromSquareMeters(3.2), AreaAllowance.FromFraction(0.15), "ladder landing, measured with a rule from below, brackets guessed");
        foreach (Surface surface in new Surface[] { strap, column, measured })
        {
            Console.WriteLine($"{surface.Description}: {surface.Area.SquareMeters:0.0000} m2");
        }
        #endregion
    }

    public static void Washers()
    {
        #region washers
        var washer = new Washer(Length.FromMillimeters(40), Length.FromMillimeters(18), 90);
        foreach (double width in new[] { 80.0, 100, 150 })
        {
            var cutting = new WasherCutting(washer, Length.FromMillimeters(width), Length.FromMeters(1));
            Console.WriteLine($"{cutting}: yield {cutting.Yield}, straight rows {cutting.StraightCount}");
        }
        #endregion
    }
}
