namespace SacrificialTape.Tests.ServiceLife;

/// <summary>Made for FsCheck.</summary>
public static class SpreadCases
{
    public static FsCheck.Arbitrary<SpreadCase> Lives() => SpreadCase.Any();
}
