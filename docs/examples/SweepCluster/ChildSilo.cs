using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using Microsoft.Extensions.Hosting;

namespace SweepCluster;

/// <summary>A silo in a process of its own, which can be killed.</summary>
internal static class ChildSilo
{
    internal const string Ready = "ready";

    internal static Process Start(int siloPort, int gatewayPort, int firstSiloPort)
    {
        string program = Environment.ProcessPath!;
        string[] own = Path.GetFileNameWithoutExtension(program) == "dotnet" ? [Assembly.GetExecutingAssembly().Location] : [];
        string[] ports = [.. new[] { siloPort, gatewayPort, firstSiloPort }.Select(static port => port.ToString(CultureInfo.InvariantCulture))];
        return Process.Start(new ProcessStartInfo(program, [.. own, "--silo", .. ports])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        })!;
    }

    internal static async Task<int> Run(IReadOnlyList<string> arguments)
    {
        int[] ports = [.. arguments.Skip(1).Select(static text => int.Parse(text, CultureInfo.InvariantCulture))];
        using IHost host = Silo.Make(ports[0], ports[1], ports[2]);
        await host.StartAsync();
        await Console.Out.WriteLineAsync(Ready);

        // Its input ends when the process that started it does, however that happens: no silo stays behind.
        await Console.In.ReadToEndAsync();
        return 0;
    }
}
