using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>A tee, a strip and a lap onto the run.</summary>
public sealed record TeeCase(double RunMm, double BranchMm, double RunEndMm, double BranchEndMm, double WidthMm, double LapMm, double SaddleLapMm)
{
    internal Tee Tee() => new(Mm(this.RunMm), Mm(this.BranchMm), Mm(this.RunEndMm), Mm(this.BranchEndMm));

    internal TeeLay Lay(LayChoices choices) => new(this.Tee(), Stock(this.WidthMm), Mm(this.LapMm), Mm(this.SaddleLapMm), choices);
}
