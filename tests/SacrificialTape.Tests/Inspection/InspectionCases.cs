namespace SacrificialTape.Tests.Inspection;

/// <summary>Made for FsCheck.</summary>
public static class InspectionCases
{
    public static FsCheck.Arbitrary<ReadingCase> Readings() => ReadingCase.Any();

    public static FsCheck.Arbitrary<CutOutCase> CutOuts() => CutOutCase.Any();
}
