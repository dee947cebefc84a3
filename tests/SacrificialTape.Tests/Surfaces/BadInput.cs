using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Surfaces;

public sealed class BadInput
{
    [Fact]
    public void Metres_typed_as_millimetres() =>
        Errors.Refused(static () => Pipe(0.1683), "outsideDiameter", "0.1683 mm is outside", "at least 1 and at most 100000 mm");

    [Fact]
    public void No_length_and_too_much() => Assert.Multiple(
        static () => Errors.Refused(static () => Pipe(168.3, 0), "length", "0 m is outside", "more than 0 and at most 1000000 m"),
        static () => Errors.Refused(static () => Pipe(168.3, -10), "length", "-0.01 m is outside"),
        static () => Errors.Refused(static () => Pipe(168.3, 2e9), "length", "2000000 m is outside"));

    [Fact]
    public void Welds_that_are_none() => Assert.Multiple(
        static () => Errors.Refused(static () => new GirthWelds(Mm(168.3), 0), "count"),
        static () => Errors.Refused(static () => new GirthWelds(Mm(0.2), 1), "outsideDiameter", "0.2 mm"),
        static () => Errors.Refused(static () => new LongitudinalWelds(Mm(0), 1), "seamLength", "0 m", "more than 0 and at most 1000000 m"));
}
