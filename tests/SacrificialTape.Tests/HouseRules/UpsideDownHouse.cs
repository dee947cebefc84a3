// A house built wrongly on purpose: its ground floor leans on its upper floor in every way the check must see.
#pragma warning disable SA1403, CA1812, IDE0130
namespace UpsideDownHouse.Upper
{
    internal class Attic
    {
        internal static object Make() => new Attic();
    }

    internal sealed class Attic<T>
    {
        internal T? Held { get; init; }
    }

    [AttributeUsage(AttributeTargets.All)]
    internal sealed class AtticAttribute : Attribute;
}

namespace UpsideDownHouse.Shed
{
    internal sealed class NotARoom;
}

namespace UpsideDownHouse.Ground
{
    internal sealed class ByBase : Upper.Attic;

    internal sealed class ByBody
    {
        internal static string Name() => Upper.Attic.Make().ToString() ?? string.Empty;
    }

    internal sealed class ByLambda
    {
        internal static Func<object> Maker() => static () => Upper.Attic.Make();
    }

    [Upper.Attic]
    internal sealed class ByAttribute;

    [System.Diagnostics.DebuggerTypeProxy(typeof(Upper.Attic))]
    internal sealed class ByAttributeArgument;

    internal sealed class ByTypeArgument
    {
        internal static int Count() => new List<Upper.Attic<int>>().Count;
    }

    internal sealed class ByConstraint<T>
        where T : Upper.Attic
    {
        internal static Type Of => typeof(T);
    }

    internal sealed class Sound
    {
        internal static int One => 1;
    }
}
