namespace SacrificialTape.Examples.Tests;

/// <summary>A small survey in a folder of its own, to be spoilt by a test.</summary>
internal sealed class SurveyFolder : IDisposable
{
    internal const string Header =
        "line,shape,size,length_m,angle_deg,radius_mm,run,metal,windows,window_cm2,service_degC,wet,exposure,rate_um_a,life_a,stock,lay,lap_by,lap_mm,ends,passes,layers,method,girth_welds,long_welds,weld_stock";

    internal const string GoodLine =
        "A-1,pipe,NPS 4,20.0,,,level,steel,,,18,no,C4,,15,Z100,spiral,across,15,flush,1,1,hand,2,,Z100";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("survey-");

    internal SurveyFolder()
    {
        this.Write("lines.csv", Header + "\n" + GoodLine + "\n");
        this.Write("stock.csv", "stock,foil_um,foil_tolerance_um,adhesive_um,facing_um,width_mm,roll_m\nZ100,100,5,25,,100,50\n");
        this.Write("choices.csv", "job,end_lap_mm,hand_wander_mm,splice_lap_mm,shortest_piece_m,contingency_percent\nTest,25,2,50,1,5\n");
    }

    internal void Write(string file, string text) => File.WriteAllText(Path.Combine(this.folder.FullName, file), text);

    internal void Delete(string file) => File.Delete(Path.Combine(this.folder.FullName, file));

    /// <summary>The good line with one cell changed.</summary>
    internal static string With(string column, string cell)
    {
        string[] cells = GoodLine.Split(',');
        cells[Array.IndexOf(Header.Split(','), column)] = cell;
        return string.Join(',', cells);
    }

    internal (int Code, string Output, string Errors) Run(params string[] options)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        int code = PlantSurvey.SurveyProgram.Run([this.folder.FullName, .. options], output, errors);
        return (code, output.ToString(), errors.ToString());
    }

    public void Dispose() => this.folder.Delete(recursive: true);
}
