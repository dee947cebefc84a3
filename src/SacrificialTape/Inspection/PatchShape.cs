namespace SacrificialTape.Inspection;

/// <summary>A rectangle or an ellipse by its half sizes in mm. Both are symmetric about their two axes.</summary>
internal readonly record struct PatchShape(bool IsRectangle, double HalfLengthMm, double HalfWidthMm)
{
    /// <summary>How far it reaches from its middle in a direction, given by the cosine and the sine of its angle.</summary>
    internal double Reach(double cos, double sin)
    {
        double x = this.HalfLengthMm * Math.Abs(cos);
        double y = this.HalfWidthMm * Math.Abs(sin);
        return this.IsRectangle ? x + y : Math.Sqrt((x * x) + (y * y));
    }
}
