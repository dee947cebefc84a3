namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>A folder that goes when the test is over.</summary>
internal sealed class Folder : IDisposable
{
    internal string Path { get; } = Directory.CreateTempSubdirectory("sacrificialtape-").FullName;

    internal string this[string name] => System.IO.Path.Combine(this.Path, name);

    internal string[] Names => [.. Directory.EnumerateFiles(this.Path).Select(static file => System.IO.Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(this.Path, recursive: true);
}
