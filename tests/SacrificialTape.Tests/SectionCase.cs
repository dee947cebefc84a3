namespace SacrificialTape.Tests;

/// <summary>A section with its corners in order, steel on the left, and a strip with a lap for it.</summary>
public sealed record SectionCase(string Kind, Section Section, (double X, double Y, double Radius)[] Corners, double LengthMm, double WidthMm, double LapMm)
{
    public override string ToString() => FormattableString.Invariant($"{this.Section.Description}, strip {this.WidthMm} mm, lap {this.LapMm} mm");
}
