using System.Reflection;
using SacrificialTape.Provenance;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using Xunit;

namespace SacrificialTape.PublishedValues;

/// <summary>Nothing that the library takes from a document goes without a check or a stated reason.</summary>
public class ChecksAreComplete
{
    private const BindingFlags Statics = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;

    /// <summary>Documents behind statements that carry no number of the library's: there is nothing to compare.</summary>
    private static readonly Dictionary<string, string> Exempt = new(StringComparer.Ordinal)
    {
        [References.SoilColour.Id] = "behind the note on kinds of soil; no number",
        [References.AluminiumAlkali.Id] = "behind the note on aluminium, which the survey states by name; no potential or pH is computed or compared",
        [References.JacobiEquation.Id] = "an equation without a number; the strains that follow from it are checked by stepping along it",
        [References.GeodesicCurvature.Id] = "a formula without a number; the curvature that follows from it is checked against the curve in space",
        [References.ClairautRelation.Id] = "a theorem of geometry behind the edges of gores; the unit tests follow shortest lines step by step instead",
        [References.MixedPotential.Id] = "a principle without a number; that dissolution and reduction add, and that supply and reduction are in series, is held by properties",
        [References.ZincSteelCouplePh.Id] = "behind the words of the rule on alkaline water, as one of the sources that disagree; no loss is computed from it",
        [References.ZincAlkalineFaq.Id] = "behind the words of the rule on alkaline water, as one of the sources that disagree; nothing is held against it",
        [References.ReversalIons.Id] = "behind the finding on water that favours reversal, which the survey states by name; recalled, and no number",
        [References.CorrosionUnderInsulation.Id] = "behind the finding under insulation, which the survey states by name; no temperature is held against it",
        [References.ZincUnderInsulation.Id] = "behind the words of the rule under insulation; recalled, and no temperature is held against it",
        [References.WetStorageStain.Id] = "behind the finding on crevices at clamps, which the survey states by name; no number",
        [References.MortarOnZinc.Id] = "behind the finding on concrete and mortar, which the survey states by name; no number",
        [References.ZincOxideLimits.Id] = "exposure limits in the words of the remedy for hot work; the library measures no fume",
        [References.MiddlingSteelInSeawater.Id] = "behind the words of the rule on tape under water; no potential is held against it",
        [References.SurfaceGradeNames.Id] = "a name beside a name; no number",
        [References.SurfaceGradeNamesRecalled.Id] = "names beside names, recalled; no number",
        [References.LightningBond.Id] = "behind the finding that bonding limits are no limits of corrosion; nothing is held against its 2.5 mohm",
        [References.Saponification.Id] = "behind the finding on alkyd paint, which the survey states by name; no number",
    };

    [Fact]
    public void Case_ids_are_unique() =>
        Assert.Empty(AllChecks.Cases.GroupBy(static check => check.Id).Where(static same => same.Count() > 1).Select(static same => same.Key));

    [Fact]
    public void Every_file_of_checks_is_on_the_list()
    {
        string[] files = [.. typeof(AllChecks).Assembly.GetTypes()
            .Select(static type => (type, group: type.GetProperty("Group", Statics)))
            .Where(static found => found.group?.PropertyType == typeof(CheckGroup))
            .Select(static found => ((CheckGroup)found.group!.GetValue(null)!).Title)];

        Assert.Equal(files.Order(StringComparer.Ordinal), AllChecks.Groups.Select(static group => group.Title).Order(StringComparer.Ordinal));
        Assert.All(AllChecks.Groups, static group => Assert.NotEmpty(group.Cases));
    }

    [Fact]
    public void Every_document_of_the_library_has_a_check_or_a_reason_why_not()
    {
        HashSet<string> missing = [.. References.All.Select(static source => source.Id)];
        missing.ExceptWith(Checked());

        Assert.Equal(Exempt.Keys.Order(StringComparer.Ordinal), missing.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_document_behind_a_formula_a_rule_or_a_law_is_in_the_catalogue()
    {
        string[] behind = [.. Bases().Select(static basis => basis.Source).OfType<SourceReference>().Select(static source => source.Id).Distinct()];

        Assert.NotEmpty(behind);
        Assert.Subset(References.All.Select(static source => source.Id).ToHashSet(), behind.ToHashSet());
    }

    [Fact]
    public void Every_document_of_the_checks_is_in_a_catalogue_under_an_id_of_its_own()
    {
        string[] all = [.. References.All.Concat(Sources.All).Select(static source => source.Id)];

        Assert.Equal(all.Length, all.Distinct(StringComparer.Ordinal).Count());
        Assert.Subset(all.ToHashSet(), Checked().ToHashSet());
        Assert.Subset(Checked().ToHashSet(), Sources.All.Select(static source => source.Id).ToHashSet());
    }

    [Fact]
    public void A_tolerance_is_neither_negative_nor_larger_than_the_value_can_bear() => Assert.All(
        AllChecks.Cases,
        static check => Assert.InRange(check.Tolerance, 0, Math.Max(0.5, 0.02 * Math.Abs(check.Expected))));

    private static IEnumerable<string> Checked() =>
        AllChecks.Cases.Select(static check => check.Evidence.Source?.Id).OfType<string>();

    private static IEnumerable<Basis> Bases()
    {
        IEnumerable<object?> members = typeof(References).Assembly.GetTypes()
            .Where(static type => type.Name.EndsWith("Formulas", StringComparison.Ordinal) || type.Name.EndsWith("Sources", StringComparison.Ordinal))
            .SelectMany(static type => type.GetProperties(Statics))
            .Select(static property => property.GetValue(null));
        foreach (object? member in members)
        {
            if (member is Formula formula)
            {
                yield return formula.Basis;
            }
            else if (member is Basis basis)
            {
                yield return basis;
            }
        }

        foreach (Rule rule in RuleSet.Default.Rules)
        {
            yield return rule.Basis;
        }

        foreach (ILossLaw law in new ILossLaw[] { LinearLoss.Law, PowerLawLoss.ZincMean, PowerLawLoss.ZincUpper })
        {
            yield return law.Basis;
        }
    }
}
