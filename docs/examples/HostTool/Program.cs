using HostTool;

return HostProgram.Run(args, Console.Out, Console.Error);
