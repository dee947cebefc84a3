using System.Diagnostics;
using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>The study on a cluster, as whole processes: the same bits on one silo, on three, and when one of them is killed.</summary>
public sealed class SweepClusterTests
{
    [Fact]
    public async Task One_silo_gives_what_one_process_gives()
    {
        (int code, string output, _) = await Run("--rows", "40000", "--slice-rows", "4000", "--check");
        Assert.Equal(0, code);
        Assert.Contains("11 slices on 1 silo(s)", output, StringComparison.Ordinal);
        Assert.Contains("One process alone: the same", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_silo_killed_in_the_middle_changes_no_bit()
    {
        (int code, string output, string errors) = await Run("--rows", "400000", "--slice-rows", "4000", "--silos", "3", "--kill", "--check");
        Assert.Equal(0, code);
        Assert.Contains("A silo was killed after", errors, StringComparison.Ordinal);
        Assert.Contains("on 3 silo(s)", output, StringComparison.Ordinal);
        Assert.Contains("One process alone: the same", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_silo_cannot_be_killed_where_there_is_none_to_go_on()
    {
        (int code, _, string errors) = await Run("--kill");
        Assert.Equal(2, code);
        Assert.Contains("SweepCluster [--rows", errors, StringComparison.Ordinal);
    }

    private static async Task<(int Code, string Output, string Errors)> Run(params string[] arguments)
    {
        using Process program = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "SweepCluster.dll"), .. arguments])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        using var late = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        late.CancelAfter(TimeSpan.FromMinutes(5));
        try
        {
            Task<string> output = program.StandardOutput.ReadToEndAsync(late.Token);
            Task<string> errors = program.StandardError.ReadToEndAsync(late.Token);
            await program.WaitForExitAsync(late.Token);
            return (program.ExitCode, await output, await errors);
        }
        catch (OperationCanceledException)
        {
            program.Kill(entireProcessTree: true);
            throw;
        }
    }
}
