using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>On what the tables of fittings and the forms of heads rest.</summary>
internal static class FittingSources
{
    internal static Basis Reducers { get; } = Basis.From(References.ReducerLengths);

    internal static Basis EqualTees { get; } = Basis.From(References.EqualTees);

    internal static Basis ReducingTees { get; } = Basis.From(References.ReducingTees);

    internal static Basis Caps { get; } = Basis.From(References.CapLengths);

    internal static Basis Flanges { get; } = Basis.From(References.FlangesClass150);

    internal static Basis RaisedFace { get; } = Basis.From(References.RaisedFaceHeight);

    internal static Basis Kloepper { get; } = Basis.From(References.KloepperForm);

    internal static Basis Korbbogen { get; } = Basis.From(References.KorbbogenForm);
}
