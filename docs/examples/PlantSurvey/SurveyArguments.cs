namespace PlantSurvey;

/// <summary>What was asked for on the command line.</summary>
internal readonly record struct SurveyArguments(string Folder, Wanted Wanted, string Line)
{
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
                case "--json" when wanted == Wanted.Tables:
                    wanted = Wanted.Data;
                    break;
                case "--cuts" when wanted == Wanted.Tables:
                    wanted = Wanted.CutList;
                    break;
                case "--life" when wanted == Wanted.Tables:
                    wanted = Wanted.Life;
                    break;
                case "--site" when wanted == Wanted.Tables:
                    wanted = Wanted.Site;
                    break;
                case "--plan" when wanted == Wanted.Tables:
                    wanted = Wanted.Plan;
                    break;
                case "--inspection" when wanted == Wanted.Tables:
                    wanted = Wanted.Inspection;
                    break;
                case "--pack" when wanted == Wanted.Tables:
                    wanted = Wanted.Pack;
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
