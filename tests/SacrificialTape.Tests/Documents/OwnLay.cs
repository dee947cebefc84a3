using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A lay of a host's own, on any surface: one strip for each.</summary>
internal sealed record OwnLay(Surface Surface, StripStock Stock, string Note) : ILay
{
    internal static LayForm Form { get; } = LayForm.Of<OwnLay>("own lay", Read, Write);

    public string Description => "own lay: " + this.Note;

    public string Instruction => this.Note;

    public StripCourse Course => StripCourse.OnFace;

    public ValueList<Strip> Strips => [new Strip(this.Stock, Length.FromMeters(1), 1, StripPurpose.Other, true, Length.FromMeters(1), Length.Zero)];

    public int LayersEverywhere => 1;

    public AreaRatio LayersOnAverage => AreaRatio.FromRatio(1);

    public IEnumerable<Finding> Judge(RuleSet rules, string subject) => [];

    public Workings ShowWorkings() => this.Surface.ShowWorkings();

    private static OwnLay? Read(FormReader reader)
    {
        Surface surface = reader.Surface<Surface>("surface");
        StripStock stock = reader.Stock("stock");
        string note = reader.Text("note");
        return reader.Make(() => new OwnLay(surface, stock, note));
    }

    private static void Write(FormWriter writer, OwnLay lay)
    {
        writer.Surface("surface", lay.Surface);
        writer.Stock("stock", lay.Stock);
        writer.Text("note", lay.Note);
    }
}
