using FsCheck.Fluent;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Inspection;

/// <summary>A cut-out of either shape, a margin, and a second one that takes it in.</summary>
public sealed record CutOutCase(bool IsRectangle, double LengthMm, double WidthMm, double MarginMm, double Grown)
{
    internal CutOut CutOut => this.Make(1);

    internal CutOut Larger => this.Make(this.Grown);

    internal CutOut Make(double factor) => this.IsRectangle
        ? CutOut.Rectangle(Mm(this.LengthMm * factor), Mm(this.WidthMm))
        : CutOut.Ellipse(Mm(this.LengthMm * factor), Mm(this.WidthMm));

    internal static FsCheck.Arbitrary<CutOutCase> Any() => (
        from rectangle in Gen.Elements(true, false)
        from length in ReadingCase.Between(2, 300)
        from width in ReadingCase.Between(2, 300)
        from margin in ReadingCase.Between(0.5, 40)
        from grown in ReadingCase.Between(1, 3)
        select new CutOutCase(rectangle, length, width, margin, grown)).ToArbitrary();
}
