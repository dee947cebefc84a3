namespace SacrificialTape.Wrapping;

/// <summary>A circle or a rectangle on a face, seen along the strips. Doubles in mm, from the middle of the face.</summary>
/// <param name="IsRound">Whether it is a circle.</param>
/// <param name="AlongAtMm">Its middle along the strips.</param>
/// <param name="AcrossAtMm">Its middle across the strips.</param>
/// <param name="AlongMm">Its extent along the strips; the diameter of a circle.</param>
/// <param name="AcrossMm">Its extent across the strips; the diameter of a circle.</param>
internal readonly record struct FaceShape(bool IsRound, double AlongAtMm, double AcrossAtMm, double AlongMm, double AcrossMm)
{
    internal static FaceShape Circle(double diameterMm) => new(true, 0, 0, diameterMm, diameterMm);

    internal double LowMm => this.AcrossAtMm - (this.AcrossMm / 2);

    internal double HighMm => this.AcrossAtMm + (this.AcrossMm / 2);
}
