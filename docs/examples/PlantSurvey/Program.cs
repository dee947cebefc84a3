using PlantSurvey;

return SurveyProgram.Run(args, Console.Out, Console.Error);
