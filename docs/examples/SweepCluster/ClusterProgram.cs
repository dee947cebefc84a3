using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using CoastStudy;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using SacrificialTape.Sweeps;

namespace SweepCluster;

/// <summary>
/// Runs the coast study on a cluster: one silo in this process, any further in processes of their own. A study is a list of slices
/// that need nothing of one another; there is no more to schedule than to ask for each and to ask again where a silo was lost.
/// </summary>
public static class ClusterProgram
{
    private const int MostTries = 20;

    public static async Task<int> Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        if (ClusterArguments.Read(arguments) is not { } asked)
        {
            await errors.WriteLineAsync(ClusterArguments.Usage);
            await errors.WriteLineAsync("--kill needs at least two silos.");
            return 2;
        }

        int[] ports = FreePorts(2 * asked.Silos);
        using IHost host = Silo.Make(ports[0], ports[1], ports[0]);
        var starting = Stopwatch.StartNew();
        await host.StartAsync();
        var children = new List<Process>();
        try
        {
            for (int i = 1; i < asked.Silos; i++)
            {
                children.Add(ChildSilo.Start(ports[2 * i], ports[(2 * i) + 1], ports[0]));
            }

            foreach (Process child in children)
            {
                if (await child.StandardOutput.ReadLineAsync() != ChildSilo.Ready)
                {
                    await errors.WriteLineAsync("A silo did not start.");
                    return 1;
                }
            }

            await errors.WriteLineAsync(FormattableString.Invariant($"{asked.Silos} silo(s) after {starting.Elapsed.TotalSeconds:0.0} s"));
            return await Work(asked, host.Services.GetRequiredService<IGrainFactory>(), children, output, errors);
        }
        finally
        {
            foreach (Process child in children)
            {
                // The end of its input is the word to go.
                child.StandardInput.Close();
                child.Dispose();
            }

            // All is done: nobody needs the members to take leave of one another.
            await host.StopAsync(new CancellationToken(canceled: true));
        }
    }

    private static async Task<int> Work(
        ClusterArguments asked, IGrainFactory grains, List<Process> children, TextWriter output, TextWriter errors)
    {
        var watch = Stopwatch.StartNew();
        SliceOrder[] orders = [.. Orders(asked, sensitivity: false), .. Orders(asked, sensitivity: true)];
        byte[][][] saved = new byte[orders.Length][][];
        int done = 0;
        int again = 0;
        var once = new Lock();
        bool kill = asked.Kill;
        await Parallel.ForEachAsync(
            Enumerable.Range(0, orders.Length),
            new ParallelOptions { MaxDegreeOfParallelism = 2 * asked.Silos },
            async (i, cancellation) =>
            {
                for (int tries = 1; ; tries++)
                {
                    try
                    {
                        saved[i] = await grains.GetGrain<ISliceGrain>(FormattableString.Invariant($"{orders[i].Sensitivity}/{orders[i].Slice}")).Work(orders[i]);
                        break;
                    }
                    catch (Exception e) when (tries < MostTries && e is OrleansException or TimeoutException)
                    {
                        // The silo is lost; the same slice gives the same bytes elsewhere.
                        Interlocked.Increment(ref again);
                        await Task.Delay(500, cancellation);
                    }
                }

                lock (once)
                {
                    if (++done >= orders.Length / 3 && kill)
                    {
                        kill = false;
                        children[^1].Kill();
                        errors.WriteLine(FormattableString.Invariant($"A silo was killed after {done} of {orders.Length} slices."));
                    }
                }
            });

        AnswerSummary[] kept = [.. ClusterStudy.Of(orders[0]).Kept(), .. ClusterStudy.Of(orders[^1]).Kept()];
        int spread = ClusterStudy.Of(orders[0]).Kept().Length;
        for (int i = 0; i < orders.Length; i++)
        {
            for (int j = 0; j < saved[i].Length; j++)
            {
                kept[(orders[i].Sensitivity ? spread : 0) + j].Summary.JoinSaved(saved[i][j]);
            }
        }

        string hash = CoastProgram.Hash(kept);
        await output.WriteLineAsync(CoastSite.Said);
        await output.WriteLineAsync(FormattableString.Invariant($"{orders.Length} slices on {asked.Silos} silo(s)"));
        await output.WriteLineAsync($"Summaries, SHA-256: {hash}");
        await errors.WriteLineAsync(FormattableString.Invariant($"{again} slice(s) asked for again; {watch.Elapsed.TotalSeconds:0.0} s"));
        if (!asked.Check)
        {
            return 0;
        }

        string alone = CoastProgram.Hash(InThisProcess(asked));
        await output.WriteLineAsync(alone == hash ? "One process alone: the same" : $"One process alone: ANOTHER, {alone}");
        return alone == hash ? 0 : 1;
    }

    private static IEnumerable<SliceOrder> Orders(ClusterArguments asked, bool sensitivity)
    {
        ClusterStudy study = ClusterStudy.Of(sensitivity, asked.Rows, asked.Seed, asked.SliceRows);
        return Enumerable.Range(0, study.Table.Slices).Select(slice => new SliceOrder
        {
            Sensitivity = sensitivity,
            Rows = asked.Rows,
            Seed = asked.Seed,
            SliceRows = asked.SliceRows,
            Slice = slice,
            Fingerprint = study.Table.Fingerprint,
        });
    }

    private static List<AnswerSummary> InThisProcess(ClusterArguments asked)
    {
        var all = new List<AnswerSummary>();
        foreach (bool sensitivity in new[] { false, true })
        {
            ClusterStudy study = ClusterStudy.Of(sensitivity, asked.Rows, asked.Seed, asked.SliceRows);
            AnswerSummary[] kept = study.Kept();
            study.Table.Study.Run(kept, threads: 2);
            all.AddRange(kept);
        }

        return all;
    }

    // Held until all are found, so that each is another.
    private static int[] FreePorts(int count)
    {
        TcpListener[] held = [.. Enumerable.Range(0, count).Select(static _ => new TcpListener(IPAddress.Loopback, 0))];
        Array.ForEach(held, static one => one.Start());
        int[] ports = [.. held.Select(static one => ((IPEndPoint)one.LocalEndpoint).Port)];
        Array.ForEach(held, static one => one.Dispose());
        return ports;
    }
}
