using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Orleans.Configuration;

namespace SweepCluster;

/// <summary>A silo on a loopback address. The first keeps the list of members; a cluster for work would keep it in a database.</summary>
internal static class Silo
{
    internal static IHost Make(int siloPort, int gatewayPort, int firstSiloPort)
    {
        HostApplicationBuilder builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings());
        builder.Logging.SetMinimumLevel(LogLevel.None);
        builder.UseOrleans(silo =>
        {
            silo.UseLocalhostClustering(siloPort, gatewayPort, new IPEndPoint(IPAddress.Loopback, firstSiloPort), "sweep-cluster", "sweep-cluster");

            // A dead silo is to be known as dead within seconds: this is one machine, and its word is enough.
            silo.Configure<ClusterMembershipOptions>(static options =>
            {
                options.ProbeTimeout = TimeSpan.FromSeconds(2);
                options.NumMissedProbesLimit = 2;
                options.NumVotesForDeathDeclaration = 1;
                options.TableRefreshTimeout = TimeSpan.FromSeconds(2);
                options.IAmAliveTablePublishTimeout = TimeSpan.FromSeconds(10);
            });
            silo.Configure<SiloMessagingOptions>(static options => options.ResponseTimeout = TimeSpan.FromMinutes(2));
        });
        return builder.Build();
    }
}
