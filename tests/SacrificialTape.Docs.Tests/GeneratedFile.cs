using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>A whole file that is made from the library's own data.</summary>
internal static class GeneratedFile
{
    private const string Switch = "SACRIFICIALTAPE_WRITE_PAGES";

    /// <summary>Writes the file when the switch is 1; compares it otherwise.</summary>
    internal static void Hold(string file, string wanted)
    {
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            File.WriteAllText(Path.Combine(Repository.Root, file), wanted);
            return;
        }

        Assert.True(Repository.Read(file) == wanted, $"{file} is not current. Write it anew: {Switch}=1 dotnet run --project tests/SacrificialTape.Docs.Tests");
    }
}
