using SweepCluster;

return args is ["--silo", ..] ? await ChildSilo.Run(args) : await ClusterProgram.Run(args, Console.Out, Console.Error);
