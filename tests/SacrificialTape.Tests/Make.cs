namespace SacrificialTape.Tests;

/// <summary>Ordinary values with one thing changed at a time.</summary>
internal static class Make
{
    internal static Length Mm(double value) => Length.FromMillimeters(value);

    internal static Tape Tape(double foilMm = 0.1, bool faced = false) => new(
        new Foil(Mm(foilMm)), new Adhesive(Mm(0.03)), faced ? new FacingFilm(Mm(0.02)) : null);

    internal static StripStock Stock(double widthMm = 100, double rollM = 30, double foilMm = 0.1) =>
        new(Tape(foilMm), Mm(widthMm), Length.FromMeters(rollM));

    internal static StraightPipe Pipe(double diameterMm = 168.3, double lengthMm = 12_000) =>
        new(Mm(diameterMm), Mm(lengthMm));

    internal static LayChoices Choices(double wanderMm = 0, double endLapMm = 10, int passes = 1) =>
        new(Mm(endLapMm), Mm(wanderMm), passes);

    internal static TakeOffChoices TakeOff(double contingency = 0.05, double spliceMm = 10, double shortestMm = 1000) =>
        new(Mm(spliceMm), Mm(shortestMm), Contingency.FromFraction(contingency));
}
