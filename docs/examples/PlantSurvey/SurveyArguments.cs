namespace PlantSurvey;

/// <summary>What was asked for on the command line.</summary>
internal readonly record struct SurveyArguments(string Folder, Wanted Wanted, string Line)
{
    private static readonly Dictionary<string, Wanted> Flags = new()
    {
        ["--json"] = Wanted.Data,
        ["--pack"] = Wanted.Pack,
        ["--cuts"] = Wanted.CutList,
        ["--life"] = Wanted.Life,
        ["--site"] = Wanted.Site,
        ["--plan"] = Wanted.Plan,
        ["--inspection"] = Wanted.Inspection,
    };

    internal static bool TryRead(IReadOnlyList<string> arguments, out SurveyArguments read)
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "site");
        Wanted wanted = Wanted.Tables;
        string line = string.Empty;
        read = default;
        bool folderGiven = false;
        for (int i = 0; i < arguments.Count; i++)
        {
            switch (arguments[i])
            {
                case { } flag when wanted == Wanted.Tables && Flags.TryGetValue(flag, out Wanted asked):
                    wanted = asked;
                    break;
                case "--crew" or "--workings" or "--choose" when wanted == Wanted.Tables && i + 1 < arguments.Count:
                    wanted = arguments[i] switch
                    {
                        "--crew" => Wanted.Crew,
                        "--choose" => Wanted.Choice,
                        _ => Wanted.Workings,
                    };
                    line = arguments[++i];
                    break;
                case { } text when !folderGiven && !text.StartsWith('-'):
                    folder = text;
                    folderGiven = true;
                    break;
                default:
                    return false;
            }
        }

        read = new(folder, wanted, line);
        return true;
    }
}
