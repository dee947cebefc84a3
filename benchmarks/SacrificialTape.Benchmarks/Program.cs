using BenchmarkDotNet.Running;
using SacrificialTape.Benchmarks;

// "survey N" works out one survey of pipe in this process and prints what it cost, "mixed N" one of every shape: time it
// from outside for the cold figure.
if (args is ["survey" or "mixed", var lines])
{
    return SurveyOnce.Run(int.Parse(lines, System.Globalization.CultureInfo.InvariantCulture), args[0] == "mixed");
}

// "exchange N" writes a job of N lines as a document and reads it back, a few times over: the first time is the cold one.
if (args is ["exchange", var count])
{
    return JobExchange.Run(int.Parse(count, System.Globalization.CultureInfo.InvariantCulture));
}

// "scaling" compares the cost of a line at two sizes of survey in one process.
if (args is ["scaling"])
{
    return SurveyScaling.Run();
}

// "rules FILE" reads a rule set as the first call of this process; "rule-files FOLDER" writes two to read.
if (args is ["rules", var file])
{
    return RuleSetOnce.Run(file);
}

if (args is ["rule-files", var folder])
{
    return RuleSetOnce.WriteFiles(folder);
}

// "packs" compares job packs of two sizes in one process.
if (args is ["packs"])
{
    return PackScaling.Run();
}

// "climate ROWS ROUNDS FILE" times lives from climate and writes them to a file, "study ROWS" a study and its memory: see
// benchmarks/life-from-climate/run.
if (args is ["climate", var climateRows, var rounds, var answers])
{
    return ClimateSpeed.Lives(
        int.Parse(climateRows, System.Globalization.CultureInfo.InvariantCulture),
        int.Parse(rounds, System.Globalization.CultureInfo.InvariantCulture),
        answers);
}

if (args is ["climate-grid", var climates, var tapes, var gridRounds, var gridAnswers])
{
    return ClimateSpeed.Grid(
        int.Parse(climates, System.Globalization.CultureInfo.InvariantCulture),
        int.Parse(tapes, System.Globalization.CultureInfo.InvariantCulture),
        int.Parse(gridRounds, System.Globalization.CultureInfo.InvariantCulture),
        gridAnswers);
}

if (args is ["study", var studyRows])
{
    return ClimateSpeed.Study(long.Parse(studyRows, System.Globalization.CultureInfo.InvariantCulture));
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
