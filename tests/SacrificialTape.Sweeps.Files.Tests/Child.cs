using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace SacrificialTape.Sweeps.Files.Tests;

/// <summary>This test program as a child of itself that works a slow study into a folder, to be killed in the middle.</summary>
internal static class Child
{
    private const string Asked = "SACRIFICIALTAPE_TEST_CHILD_FOLDER";

    internal static Process Start(string folder)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { UseShellExecute = false, RedirectStandardOutput = true };
        start.Environment[Asked] = folder;
        return Process.Start(start)!;
    }

    /// <summary>The same study, but slow enough for its end to be far away when it is killed.</summary>
    internal static StudyTable Slow() => Samples.Table(pause: 60, rows: 40_000);

    // Before the test runner's own beginning: a child that was asked for a study runs no tests.
#pragma warning disable CA2255 // This is a program, not a library.
    [ModuleInitializer]
    internal static void RunIfAsked()
#pragma warning restore CA2255
    {
        if (Environment.GetEnvironmentVariable(Asked) is not { Length: > 0 } folder)
        {
            return;
        }

        new StudyFolder(folder, Slow(), Samples.Kept()).Run(threads: 2);
        Environment.Exit(0);
    }
}
