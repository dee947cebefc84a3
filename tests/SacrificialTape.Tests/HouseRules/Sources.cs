using System.Reflection;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>Every public calculation that gives a number names its source, or its type shows its workings.</summary>
public sealed class Sources
{
    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    // What does arithmetic without a source, and why that is right.
    private static readonly Dictionary<string, string> Exempt = new(StringComparer.Ordinal)
    {
        ["AnodeConsumption.FromPoundsPerAmpereYear"] = "change of unit by an exact factor",
        ["CorrosionRate.FromMilsPerYear"] = "change of unit by an exact factor",
        ["MassLossRate.FromOuncesPerSquareFootYear"] = "change of unit by exact factors",
        ["CorrosionRate.FromLoss"] = "the definition of a mean rate; the ground floor stands under Provenance",
        ["CorrosionRate.ToMassLoss"] = "mass through density; the ground floor stands under Provenance",
        ["MassLossRate.ToCorrosionRate"] = "mass through density; the ground floor stands under Provenance",
        ["Measure.ToLength"] = "change of unit by an exact factor",
        ["Measure.ToArea"] = "change of unit by an exact factor",
        ["Measure.ToDuration"] = "change of unit by an exact factor",
        ["Measure.ToTemperature"] = "change of unit by an exact factor",
        ["Measure.ToCorrosionRate"] = "change of unit by an exact factor",
        ["Foil.LeastThickness"] = "nominal less the tolerance that the user stated",
        ["Strip.Lap"] = "what is left of a length when its other parts are counted",
        ["Strip.TotalLength"] = "length times count of like pieces",
        ["LayStrips.StripLength"] = "lengths times counts of like pieces, added up",
        ["StripLedger.Offcut"] = "what is left when the other parts are counted; the workings of the take-off show it",
        ["FormReader.Measure"] = "a number that stands in a file; nothing is worked out",
        ["FormReader.Length"] = "a number that stands in a file, in another unit by an exact factor",
        ["FormReader.OptionalLength"] = "a number that stands in a file, in another unit by an exact factor",
        ["FormReader.Angle"] = "a number that stands in a file; nothing is worked out",
        ["FormReader.Area"] = "a number that stands in a file, in another unit by an exact factor",
        ["FormReader.Number"] = "a number that stands in a file; nothing is worked out",
        ["Fingerprint.Parse"] = "text that is checked and kept; nothing is worked out",
    };

    private static readonly Calculations Code = new(Library.Assembly);

    [Fact]
    public void Every_public_calculation_names_its_source_or_shows_its_workings()
    {
        string[] all = [.. Library.PublicTypes.SelectMany(type => Unsourced(type, Code)).Distinct()];
        Assert.Empty(all.Except(Exempt.Keys));
    }

    [Fact]
    public void No_exemption_is_kept_that_is_not_needed()
    {
        string[] all = [.. Library.PublicTypes.SelectMany(type => Unsourced(type, Code)).Distinct()];
        Assert.Empty(Exempt.Keys.Except(all));
    }

    [Fact]
    public void What_a_constructor_works_out_in_a_kernel_can_be_shown()
    {
        string[] silent =
        [
            .. from type in Library.PublicTypes
               where !typeof(IHasWorkings).IsAssignableFrom(type)
               where type.GetConstructors(Declared).Any(Code.CallsKernel)
               select type.Name,
        ];
        Assert.Empty(silent);
    }

    [Fact]
    public void Every_source_named_is_a_formula_or_a_basis()
    {
        (MemberInfo Member, BasisOfAttribute Source)[] named =
        [
            .. from type in Library.Assembly.GetTypes()
               from member in type.GetMembers(Declared)
               from source in member.GetCustomAttributes<BasisOfAttribute>()
               select (member, source),
        ];
        Assert.True(named.Length > 30, $"Only {named.Length} sources were found.");
        foreach ((MemberInfo member, BasisOfAttribute source) in named)
        {
            object? value = source.Catalogue.GetProperty(source.Formula, Declared)?.GetValue(null);
            Assert.True(value is Formula or Basis, $"{member.DeclaringType!.Name}.{member.Name} names {source.Catalogue.Name}.{source.Formula}.");
        }
    }

    [Fact]
    public void The_check_tells_calculations_from_stored_values()
    {
        var code = new Calculations(typeof(Sources).Assembly);
        Assert.Equal(["Careless.Doubled", "Careless.Halved", "Careless.Summed"], Unsourced(typeof(Careless), code).Order());
    }

    [Fact]
    public void Formula_and_reference_ids_are_unique()
    {
        Assert.True(Library.Formulas.Count > 25, $"Only {Library.Formulas.Count} formulas were found.");
        Assert.Equal(Library.Formulas.Count, Library.Formulas.Select(static one => one.Formula.Id).Distinct().Count());
        Assert.Equal(References.All.Count, References.All.Select(static one => one.Id).Distinct().Count());
    }

    [Fact]
    public void All_references_are_listed()
    {
        SourceReference[] members =
        [
            .. typeof(References).GetProperties(Declared)
                .Where(static one => one.PropertyType == typeof(SourceReference))
                .Select(static one => (SourceReference)one.GetValue(null)!),
        ];
        // Parts of the class come in the compiler's order, so only the set is compared; none stands twice.
        Assert.Equal(members.OrderBy(static one => one.Id, StringComparer.Ordinal), References.All.OrderBy(static one => one.Id, StringComparer.Ordinal));
    }

    [Fact]
    public void Every_basis_with_a_document_takes_it_from_the_catalogue()
    {
        IEnumerable<Basis> all = Library.Formulas.Select(static one => one.Formula.Basis)
            .Concat(SacrificialTape.Rules.RuleSet.Default.Rules.Select(static rule => rule.Basis))
            .Concat(from type in Library.Assembly.GetTypes()
                    from member in type.GetProperties(Declared)
                    where member.PropertyType == typeof(Basis) && member.GetMethod is { IsStatic: true }
                    select (Basis)member.GetValue(null)!);
        SourceReference[] cited = [.. all.Select(static basis => basis.Source).OfType<SourceReference>()];
        Assert.True(cited.Length > 15, $"Only {cited.Length} citations were found.");
        Assert.All(cited, static source => Assert.Contains(source, References.All));
    }

    [Fact]
    public void A_formula_writes_only_symbols_it_explains_and_explains_only_symbols_it_writes()
    {
        Assert.All(Library.Formulas, static one =>
        {
            string[] known = ["sin", "cos", "tan", "asin", "acos", "atan", "sqrt", "pow", "exp", "ln", "min", "max", "floor", "ceil", "pi"];
            IEnumerable<string> written = System.Text.RegularExpressions.Regex
                .Matches(one.Formula.Expression, "(?<![0-9.])[A-Za-z_][A-Za-z_0-9]*")
                .Select(static match => match.Value)
                .Distinct()
                .Except(known);
            Assert.Equal(one.Formula.Inputs.Select(static symbol => symbol.Name).Order(StringComparer.Ordinal), written.Order(StringComparer.Ordinal));
        });
    }

    private static IEnumerable<string> Unsourced(Type type, Calculations code)
    {
        if (type.IsEnum || typeof(IHasWorkings).IsAssignableFrom(type))
        {
            return [];
        }

        const BindingFlags Public = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        IEnumerable<string> properties =
            from property in type.GetProperties(Public)
            where Calculations.IsNumber(property.PropertyType)
            where !property.GetCustomAttributes<BasisOfAttribute>().Any()
            where property.GetMethod is { } get && code.Calculates(get)
            select type.Name + "." + property.Name;
        IEnumerable<string> methods =
            from method in type.GetMethods(Public)
            where !method.IsSpecialName && method.Name is not ("GetHashCode" or "CompareTo")
            where Calculations.IsNumber(method.ReturnType)
            where !method.GetCustomAttributes<BasisOfAttribute>().Any()
            where code.Calculates(method)
            select type.Name + "." + method.Name;
        return properties.Concat(methods);
    }

    // What the check must find, and what it must let pass.
    private sealed class Careless
    {
        public Length Stored { get; } = Length.FromMillimeters(1);

        public Length Doubled => Length.FromMillimeters(CarelessKernel.Double(this.Stored.Millimeters));

        public double Halved => this.Half();

        public double Summed => new[] { 1.0, 2.0 }.Sum();

        [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
        public double Sourced => this.Half();

        private double Half() => this.Stored.Millimeters / 2;
    }

    private static class CarelessKernel
    {
        internal static double Double(double value) => value + value;
    }
}
