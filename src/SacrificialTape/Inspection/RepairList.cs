using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>The patches for many damaged spots, with the tape they need.</summary>
/// <remarks>
/// Margin: 0 to 1 m. Step: 0.1 to 100 mm. Lap of pieces side by side: zero or more, less than the strip's width. 1 to 10 000 spots. Spots without a
/// stated place are not held against their neighbours.
/// </remarks>
public sealed record RepairList : IHasWorkings
{
    private const int MostSpots = 10_000;

    /// <summary>Works out the patches.</summary>
    /// <param name="damages">The damaged spots.</param>
    /// <param name="stock">The strip that patches are cut from.</param>
    /// <param name="margin">Clear distance round each cut-out.</param>
    /// <param name="step">Patch sizes are rounded up to whole steps.</param>
    /// <param name="lap">Lap of pieces side by side, where a patch is wider than the strip.</param>
    /// <param name="overlaps">What becomes of patches that would lie over each other.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or a patch would go half way round a bend.</exception>
    public RepairList(IEnumerable<Damage> damages, StripStock stock, Length margin, Length step, Length lap, OverlapHandling overlaps)
    {
        ValueList<Damage> allDamages = damages.Listed();
        ArgumentNullException.ThrowIfNull(stock);
        AcceptedRange.Between(1, MostSpots, "spots").Check(allDamages.Count, nameof(damages));
        double lapMm = AcceptedRange.FromBelow(0, stock.WidthMm, "mm").Noting("the strip's width").Check(UnitConversions.Millimeters(lap), nameof(lap));
        if (!Enum.IsDefined(overlaps))
        {
            throw new ArgumentOutOfRangeException(nameof(overlaps), overlaps, "Flag or Merge.");
        }

        this.Damages = allDamages;
        this.Overlaps = overlaps;
        List<(Damage Damage, OvalPatch Patch)> patches = [.. allDamages.Select(damage => (damage, OvalPatch.Smallest(damage.CutOut, margin, step)))];
        if (overlaps == OverlapHandling.Merge)
        {
            Join(patches, margin, step);
        }

        this.Repairs = new ValueList<PatchRepair>(patches.Select(one => new PatchRepair(one.Damage, one.Patch, stock, lapMm)));
    }

    /// <summary>The damaged spots as given.</summary>
    public ValueList<Damage> Damages { get; }

    /// <summary>What becomes of patches that would lie over each other.</summary>
    public OverlapHandling Overlaps { get; }

    /// <summary>The patches; fewer than spots where some were joined.</summary>
    public ValueList<PatchRepair> Repairs { get; }

    /// <summary>The pieces of strip, for the take-off.</summary>
    public ValueList<Strip> Strips => new(this.Repairs.Select(static repair => repair.Strip));

    /// <summary>Area of all patches.</summary>
    public Area PatchedArea => Area.FromSquareMeters(this.PatchedM2);

    internal double PatchedM2 => this.Repairs.Sum(static repair => PatchKernel.OvalSquareM(repair.Patch.LengthMm, repair.Patch.WidthMm, default(NoSteps)));

    /// <summary>Holds each patch against the rules, and against its neighbours.</summary>
    /// <param name="rules">The rule set.</param>
    public IEnumerable<Finding> Judge(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        foreach (Finding finding in this.Repairs.SelectMany(repair => repair.Judge(rules)))
        {
            yield return finding;
        }

        for (int i = 0; i < this.Repairs.Count; i++)
        {
            for (int j = i + 1; j < this.Repairs.Count; j++)
            {
                if (Overlap((this.Repairs[i].Damage, this.Repairs[i].Patch), (this.Repairs[j].Damage, this.Repairs[j].Patch)))
                {
                    yield return rules[RuleIds.PatchesOverlap].State($"{this.Repairs[i].Damage.Name} and {this.Repairs[j].Damage.Name}");
                }
            }
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings() => new(
        "Patches for " + this.Damages.Count.ToString(CultureInfo.InvariantCulture) + " spot(s)",
        new ValueList<WorkingStep>(this.Repairs.SelectMany(static repair => repair.ShowWorkings().Steps)));

    /// <summary>Spots, patches and area in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Damages.Count} spot(s), {this.Repairs.Count} patch(es), {this.PatchedM2:0.####} m2");

    private static void Join(List<(Damage Damage, OvalPatch Patch)> patches, Length margin, Length step)
    {
        for (int i = 0; i < patches.Count; i++)
        {
            for (int j = i + 1; j < patches.Count; j++)
            {
                if (patches[i].Damage.Place.Equals(patches[j].Damage.Place) && Overlap(patches[i], patches[j]))
                {
                    Damage both = patches[i].Damage.Joined(patches[j].Damage);
                    patches[i] = (both, OvalPatch.Smallest(both.CutOut, margin, step));
                    patches.RemoveAt(j);

                    // The larger patch may reach one that was clear before.
                    i = -1;
                    break;
                }
            }
        }
    }

    private static bool Overlap((Damage Damage, OvalPatch Patch) one, (Damage Damage, OvalPatch Patch) other)
    {
        if (!one.Damage.HasPosition || !other.Damage.HasPosition)
        {
            return false;
        }

        double east = other.Damage.AlongMm - one.Damage.AlongMm;
        double north = other.Damage.AcrossMm - one.Damage.AcrossMm;
        double reach = (Math.Max(one.Patch.LengthMm, one.Patch.WidthMm) + Math.Max(other.Patch.LengthMm, other.Patch.WidthMm)) / 2;
        return (east * east) + (north * north) < reach * reach
            && PatchKernel.GapMm(one.Patch.Half, one.Damage.TurnRadians, other.Patch.Half, other.Damage.TurnRadians, east, north) < -1e-6;
    }
}
