namespace SacrificialTape.Tests.Wrapping;

internal static class Fluently
{
    internal static T Also<T>(this T value, Action<T> act)
    {
        act(value);
        return value;
    }
}
