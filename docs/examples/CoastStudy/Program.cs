using CoastStudy;

return CoastProgram.Run(args, Console.Out, Console.Error);
