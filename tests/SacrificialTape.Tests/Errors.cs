namespace SacrificialTape.Tests;

/// <summary>Bad arguments are refused with parameter, value with unit, and the accepted range.</summary>
internal static class Errors
{
    internal static void Refused(Func<object?> make, string parameter, params string[] said)
    {
        ArgumentOutOfRangeException thrown = Assert.Throws<ArgumentOutOfRangeException>(() => { _ = make(); });
        Assert.Equal(parameter, thrown.ParamName);
        Assert.All(said, text => Assert.Contains(text, thrown.Message, StringComparison.Ordinal));
    }
}
