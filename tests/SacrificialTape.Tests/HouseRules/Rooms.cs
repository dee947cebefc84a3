using System.Reflection;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>A room may use the rooms under it, never one above.</summary>
public sealed class Rooms
{
    // From the ground floor up. Rooms may be listed before they are built.
    private static readonly string[] FromGroundUp =
    [
        "Quantities", "Provenance", "Rules", "Tapes", "Surfaces", "Wrapping", "TakeOff", "Exposure", "Galvanic", "ServiceLife",
        "Costing", "Contact", "SiteConditions", "Inspection", "Jobs", "Documents",
    ];

    [Fact]
    public void No_room_uses_a_room_above_it()
    {
        IReadOnlyCollection<(string Type, string Namespace)> all = References(typeof(Measure).Assembly, "SacrificialTape");

        // What is read must be enough to judge by: every built room shows, and the roof is seen to use the ground.
        Assert.True(all.Count > 300, $"Only {all.Count} references were read.");
        Assert.Contains(("SacrificialTape.Jobs.LineEstimator", "SacrificialTape.Quantities"), all);
        Assert.Empty(Faults(all, "SacrificialTape", FromGroundUp));
    }

    [Fact]
    public void The_check_sees_a_house_built_upside_down()
    {
        string[] faults = [.. Faults(References(typeof(Rooms).Assembly, "UpsideDownHouse"), "UpsideDownHouse", ["Ground", "Upper"])];
        string[] expected =
        [
            "UpsideDownHouse.Ground.ByAttribute uses UpsideDownHouse.Upper",
            "UpsideDownHouse.Ground.ByAttributeArgument uses UpsideDownHouse.Upper",
            "UpsideDownHouse.Ground.ByBase uses UpsideDownHouse.Upper",
            "UpsideDownHouse.Ground.ByBody uses UpsideDownHouse.Upper",
            "UpsideDownHouse.Ground.ByConstraint`1 uses UpsideDownHouse.Upper",
            "UpsideDownHouse.Ground.ByLambda uses UpsideDownHouse.Upper",
            "UpsideDownHouse.Ground.ByTypeArgument uses UpsideDownHouse.Upper",
            "UpsideDownHouse.Shed.NotARoom is in no room",
        ];
        Assert.Equal(expected, faults);
    }

    private static IReadOnlyCollection<(string Type, string Namespace)> References(Assembly assembly, string house)
    {
        using var references = new NamespaceReferences(assembly, house);
        return references.Read();
    }

    private static SortedSet<string> Faults(
        IEnumerable<(string Type, string Namespace)> references, string house, string[] fromGroundUp)
    {
        var faults = new SortedSet<string>(StringComparer.Ordinal);
        foreach ((string type, string used) in references)
        {
            string own = type[..type.LastIndexOf('.')];
            if (!InHouse(own, house))
            {
                continue;
            }

            int floor = Array.IndexOf(fromGroundUp, own.Length > house.Length ? own[(house.Length + 1)..] : string.Empty);
            if (floor < 0)
            {
                faults.Add($"{type} is in no room");
            }
            else if (InHouse(used, house) && Array.IndexOf(fromGroundUp, used.Length > house.Length ? used[(house.Length + 1)..] : string.Empty) > floor)
            {
                faults.Add($"{type} uses {used}");
            }
        }

        return faults;
    }

    private static bool InHouse(string name, string house) =>
        name == house || name.StartsWith(house + ".", StringComparison.Ordinal);
}
