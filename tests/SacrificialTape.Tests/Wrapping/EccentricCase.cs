using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>An eccentric reducer and a strip that its small end takes.</summary>
public sealed record EccentricCase(double LargeMm, double SmallMm, double LengthMm, double WidthMm, double LapMm)
{
    internal EccentricReducer Reducer() => new(Mm(this.LargeMm), Mm(this.SmallMm), Mm(this.LengthMm));

    internal EccentricReducerLay Lay(LayChoices choices) => new(this.Reducer(), Stock(this.WidthMm), Mm(this.LapMm), choices);
}
