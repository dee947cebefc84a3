using System.Reflection;
using System.Runtime.CompilerServices;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>A record that shows a number says it in words of its own: those the compiler makes follow the culture of the machine.</summary>
public sealed class WordsOfTheirOwn
{
    [Fact]
    public void No_record_leaves_its_numbers_to_the_compiler()
    {
        Type[] types = [.. Library.Assembly.GetExportedTypes().Where(static type => type is { IsEnum: false, IsInterface: false } && Properties(type).Any(ShowsNumber))];
        Assert.True(types.Length > 100, $"Only {types.Length} types were found.");
        Assert.Empty(types.Where(MadeByTheCompiler).Select(static type => type.FullName));
    }

    private static PropertyInfo[] Properties(Type type) => type.GetProperties(BindingFlags.Public | BindingFlags.Instance);

    private static bool ShowsNumber(PropertyInfo property)
    {
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return type.Namespace == "UnitsNet" || type == typeof(double) || type == typeof(decimal);
    }

    private static bool MadeByTheCompiler(Type type) =>
        type.GetMethod(nameof(ToString), BindingFlags.Public | BindingFlags.Instance, Type.EmptyTypes) is not { } method
        || method.DeclaringType == typeof(object)
        || method.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false);
}
