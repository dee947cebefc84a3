using System.Reflection;
using System.Runtime.CompilerServices;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>Nothing public can be changed after it was made, and so not made outside its constructor's checks.</summary>
public sealed class Immutability
{
    private const BindingFlags All =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    [Fact]
    public void No_public_type_can_be_changed()
    {
        Assert.True(Library.PublicTypes.Count > 60, $"Only {Library.PublicTypes.Count} public types were found.");
        Assert.Empty(Library.PublicTypes.SelectMany(Faults));
    }

    [Fact]
    public void The_check_sees_every_way_in() => Assert.Equal(
        ["Loose.Array", "Loose.Field", "Loose.List", "Loose.Listed", "Loose.init", "Loose.set", "Loose: not readonly"],
        Faults(typeof(Loose)).Order(StringComparer.Ordinal));

    [Fact]
    public void Lists_handed_out_cannot_be_cast_back_to_something_that_changes()
    {
        JobEstimate estimate = SampleJob.Make().Estimate();
        object[] handedOut =
        [
            References.All, RuleSet.Default.Rules, estimate.Lines, estimate.Findings, estimate.GeneralFindings,
            estimate.TakeOff.Stocks, estimate.Job.Lines, estimate.Lines[0].Strips, estimate.Lines[0].CrewSteps,
            estimate.Lines[0].Findings, estimate.Lines[0].Life.ByLaw, estimate.Lines[0].Life.ShowWorkings().Steps,
            estimate.Lines[0].Life.Judge(estimate.Lines[0].Line.RequiredLife, RuleSet.Default, "here"),
        ];
        Assert.All(handedOut, static list =>
        {
            Assert.IsNotType<Array>(list, exactMatch: false);
            Assert.False(list is System.Collections.IList { IsReadOnly: false }, list.GetType().Name);
        });
    }

    [Fact]
    public void A_list_keeps_its_items_when_the_callers_array_changes()
    {
        int[] given = [1, 2, 3];
        var list = new ValueList<int>(given);
        given[0] = 9;
        Assert.Equal([1, 2, 3], list);
    }

    private static IEnumerable<string> Faults(Type type)
    {
        if (type.IsValueType && !type.IsEnum && type.GetCustomAttribute<IsReadOnlyAttribute>() is null)
        {
            yield return type.Name + ": not readonly";
        }

        foreach (FieldInfo field in type.GetFields(All))
        {
            // The value field of an enum is the runtime's own.
            if ((field.IsPublic || field.IsFamily) && !field.IsLiteral && !type.IsEnum)
            {
                yield return type.Name + "." + field.Name;
            }
        }

        foreach (PropertyInfo property in type.GetProperties(All))
        {
            if (property.SetMethod is not null)
            {
                bool init = property.SetMethod.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
                yield return type.Name + (init ? ".init" : ".set");
            }

            if (property.GetMethod is { IsPublic: true })
            {
                Type given = property.PropertyType;
                if (given.IsArray || (given.IsGenericType && given.GetGenericTypeDefinition() is { } open
                    && (open == typeof(List<>) || open == typeof(IList<>) || open == typeof(Dictionary<,>) || open == typeof(ICollection<>))))
                {
                    yield return type.Name + "." + property.Name;
                }
            }
        }
    }

#pragma warning disable CS0649, CA1051, CA1819, CA1002, CA2227, CA1823, CS0169
    private struct Loose
    {
        public int Field;

        public int Set { get; set; }

        public int Init { get; init; }

        public int[] Array => [];

        public List<int> List => [];

        public IList<int> Listed => [];
    }
#pragma warning restore
}
