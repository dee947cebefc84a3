using System.Reflection;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>The compiled library as the house rules see it.</summary>
internal static class Library
{
    internal static Assembly Assembly { get; } = typeof(Measure).Assembly;

    internal static IReadOnlyList<Type> PublicTypes { get; } = [.. Assembly.GetExportedTypes()];

    internal static IReadOnlyList<Type> PublicStructs { get; } =
        [.. PublicTypes.Where(static type => type.IsValueType && !type.IsEnum)];

    /// <summary>Every formula of every catalogue, with the member that holds it.</summary>
    internal static IReadOnlyList<(PropertyInfo Member, Formula Formula)> Formulas { get; } =
    [
        .. from type in Assembly.GetTypes()
           where type.Name.EndsWith("Formulas", StringComparison.Ordinal)
           from member in type.GetProperties(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)
           where member.PropertyType == typeof(Formula)
           select (member, (Formula)member.GetValue(null)!),
    ];

    /// <summary>The file-system root of the repository: the folder that holds the solution.</summary>
    internal static DirectoryInfo RepositoryRoot
    {
        get
        {
            DirectoryInfo? folder = new(AppContext.BaseDirectory);
            while (folder is not null && folder.GetFiles("SacrificialTape.sln").Length == 0)
            {
                folder = folder.Parent;
            }

            return folder ?? throw new InvalidOperationException("The tests do not run inside the repository.");
        }
    }
}
