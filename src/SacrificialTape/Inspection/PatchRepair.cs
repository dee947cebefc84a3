using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Inspection;

/// <summary>One patch of a repair: its size, the pieces it is cut from, and how it takes the curve.</summary>
/// <remarks>
/// <para>A patch that fits the strip is cut from one piece, with its longer axis across the strip where it fits so and along it where not. A wider one
/// is laid from several pieces along its longer axis, side by side with a lap.</para>
/// <para>On a bend the strain is that of a strip as wide as the shorter axis, laid along a shortest line with the longer: on
/// the outside the edge puckers, on the inside it stretches. An oval narrows towards its ends, so this is on the safe side.</para>
/// </remarks>
public sealed record PatchRepair : IHasWorkings
{
    private readonly StoredNumber lapMm;

    internal PatchRepair(Damage damage, OvalPatch patch, StripStock stock, double lapMm)
    {
        this.Damage = damage;
        this.Patch = patch;
        this.lapMm = new StoredNumber(lapMm);
        this.Strip = this.CutFrom(stock, default(NoSteps));
        if (damage.Place.Bend is { } bend)
        {
            AcceptedRange.AboveUpTo(0, Math.PI * bend.DiameterMm / 2, "mm").Noting("half way round the bend: rewrap instead")
                .Check(this.NarrowMm, nameof(damage));
            this.Pucker = EdgeStrain.FromFraction(StrainKernel.Pucker(this.NarrowMm, bend.DiameterMm / 2, bend.RadiusMm, default(NoSteps)));
            double stretch = StrainKernel.Stretch(this.NarrowMm, bend.DiameterMm / 2, bend.RadiusMm, default(NoSteps));
            this.Stretch = EdgeStrain.FromFraction(AcceptedRange.Between(0, 1, string.Empty)
                .Noting("stretch on the inside of the bend: no patch takes more").Check(stretch, nameof(damage)));
        }
    }

    /// <summary>The damage.</summary>
    public Damage Damage { get; }

    /// <summary>The patch.</summary>
    public OvalPatch Patch { get; }

    /// <summary>The pieces of strip it is cut from.</summary>
    public Strip Strip { get; }

    /// <summary>Pucker of its edge on the outside of a bend; null elsewhere.</summary>
    public EdgeStrain? Pucker { get; }

    /// <summary>Stretch of its edge on the inside of a bend; null elsewhere.</summary>
    public EdgeStrain? Stretch { get; }

    private double NarrowMm => Math.Min(this.Patch.LengthMm, this.Patch.WidthMm);

    private double LongMm => Math.Max(this.Patch.LengthMm, this.Patch.WidthMm);

    /// <summary>Holds margin, bending and strain against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    public IEnumerable<Finding> Judge(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        string subject = this.Damage.Name;
        foreach (Finding finding in this.Patch.Judge(rules, subject))
        {
            yield return finding;
        }

        double strip = this.Strip.Stock.WidthMm;
        if (WithAllowance.Above(this.NarrowMm, strip))
        {
            yield return rules[RuleIds.PatchWiderThanStrip].State(
                subject, new Measure(this.NarrowMm, TradeUnit.Millimeter), new Measure(strip, TradeUnit.Millimeter));
        }

        double foil = this.Strip.Stock.Tape.Foil.ThicknessMm;
        (string Rule, double? Value, TradeUnit Unit)[] held =
        [
            (RuleIds.MinimumWrapDiameter, this.Damage.Place.DiameterMm / foil, TradeUnit.One),
            (RuleIds.MinimumFoldRadius, this.Damage.Place.EdgeMm / foil, TradeUnit.One),
            (RuleIds.MaximumPucker, this.Pucker?.Fraction * 100, TradeUnit.Percent),
            (RuleIds.MaximumStretch, this.Stretch?.Fraction * 100, TradeUnit.Percent),
        ];
        foreach ((string rule, double? value, TradeUnit unit) in held)
        {
            if (value is { } known && rules[rule].Judge(new Measure(known, unit), subject) is { } finding)
            {
                yield return finding;
            }
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.CutFrom(this.Strip.Stock, steps);
        if (this.Damage.Place.Bend is { } bend)
        {
            _ = StrainKernel.Pucker(this.NarrowMm, bend.DiameterMm / 2, bend.RadiusMm, steps);
            _ = StrainKernel.Stretch(this.NarrowMm, bend.DiameterMm / 2, bend.RadiusMm, steps);
        }

        return new Workings(
            "Patch of " + this.Damage.Name, new ValueList<WorkingStep>([.. this.Patch.ShowWorkings().Steps, .. steps.Under("pieces").Steps]));
    }

    /// <summary>Patch and pieces in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Damage.Name}: {this.Patch}; cut from {this.Strip.Count} x {this.Strip.LengthUm / 1e3:0.#} mm of strip {this.Strip.Stock.WidthMm:0.##} mm");

    // Cover is the cut-out, lap the ring round it, trim what falls off the pieces; laps between pieces count as trim.
    private Strip CutFrom<TSteps>(StripStock stock, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        // The shorter axis along the strip is the shorter piece.
        bool across = WithAllowance.AtMost(this.LongMm, stock.WidthMm);
        double length = across ? this.NarrowMm : this.LongMm;
        int pieces = PatchKernel.Pieces(across ? this.LongMm : this.NarrowMm, stock.WidthMm, this.lapMm.Bare, steps);
        double tape = pieces * stock.WidthMm;
        double cover = this.Patch.CutOut.SquareMm / tape;
        double patch = PatchKernel.OvalSquareMm(this.Patch.LengthMm, this.Patch.WidthMm) / tape;
        return Strip.Computed(stock, length, pieces, StripPurpose.Patch, false, Math.Min(cover, patch), Math.Max(0, length - patch));
    }
}
