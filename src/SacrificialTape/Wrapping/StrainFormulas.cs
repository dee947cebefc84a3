using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of a flat strip on a curved surface as the workings show them.</summary>
internal static class StrainFormulas
{
    private static readonly Basis Jacobi = Basis.From(References.JacobiEquation);

    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Tube = new("r", "radius of the pipe", TradeUnit.Millimeter);
    private static readonly Symbol Bend = new("R", "bend radius", TradeUnit.Millimeter);

    internal static Formula Pucker { get; } = new(
        "strain.pucker",
        new Symbol("e_out", "Edge too long on the outside of the bend: pucker", TradeUnit.One),
        "1 - cos(w / 2 / sqrt(r * (R + r)))",
        @"1 - \cos\frac{w}{2\sqrt{r(R+r)}}",
        Jacobi,
        [Width, Tube, Bend]);

    internal static Formula Stretch { get; } = new(
        "strain.stretch",
        new Symbol("e_in", "Edge too short on the inside of the bend: stretch", TradeUnit.One),
        "(exp(w / 2 / sqrt(r * (R - r))) + exp(0 - w / 2 / sqrt(r * (R - r)))) / 2 - 1",
        @"\cosh\frac{w}{2\sqrt{r(R-r)}} - 1",
        Jacobi,
        [Width, Tube, Bend]);

    internal static Formula WidestForPucker { get; } = new(
        "strain.widest-for-pucker",
        new Symbol("w_out", "Widest strip for the allowed pucker", TradeUnit.Millimeter),
        "2 * sqrt(r * (R + r)) * acos(1 - e)",
        @"2\sqrt{r(R+r)}\,\arccos(1-e)",
        Jacobi,
        [Tube, Bend, new Symbol("e", "allowed pucker", TradeUnit.One)]);

    internal static Formula WidestForStretch { get; } = new(
        "strain.widest-for-stretch",
        new Symbol("w_in", "Widest strip for the allowed stretch", TradeUnit.Millimeter),
        "2 * sqrt(r * (R - r)) * ln(1 + e + sqrt(e * (2 + e)))",
        @"2\sqrt{r(R-r)}\,\operatorname{arcosh}(1+e)",
        Jacobi,
        [Tube, Bend, new Symbol("e", "allowed stretch", TradeUnit.One)]);
}
