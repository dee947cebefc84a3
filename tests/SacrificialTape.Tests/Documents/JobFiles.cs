using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A job comes back from its file as it went in, to the last bit.</summary>
public sealed class JobFiles
{
    // Every number of the first text is canonical and exact: were one bit lost in reading, the second text would differ.
    [Property(MaxTest = 25)]
    public Property Reading_what_was_written_gives_the_same_document() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        JobDocument document = AnyJob.Make(seed);
        string text = document.Write(AnyJob.Forms);
        JobDocument read = AnyJob.Read(text);
        Same(document, read);
        Assert.Equal(document, read);
        Assert.Equal(document.GetHashCode(), read.GetHashCode());
        Assert.Equal(text, read.Write(AnyJob.Forms));
        Assert.All(read.Given, static one => Assert.EndsWith(".surface.side", one.Path, StringComparison.Ordinal)); // inches of a host
    });

    [Property(MaxTest = 5)]
    public Property What_was_read_is_estimated_to_the_same_numbers() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        JobDocument document = AnyJob.Make(seed);
        JobEstimate here = document.Job.Estimate();
        JobEstimate there = AnyJob.Read(document.Write(AnyJob.Forms)).Job.Estimate();
        Assert.Equal(here.Covered.SquareMeters, there.Covered.SquareMeters);
        Assert.Equal(here.StripLength.Micrometers, there.StripLength.Micrometers);
        Assert.Equal(here.TakeOff, there.TakeOff);
        foreach ((Finding one, Finding other) in here.Findings.Zip(there.Findings))
        {
            Assert.Equal(one.ToString(), other.ToString());
            Assert.Equal(one, other);
        }

        Assert.Equal(here.Findings.Count, there.Findings.Count);
        Assert.Equal(here.RuleSetFingerprint, there.RuleSetFingerprint);
    });

    [Fact]
    public void Every_kind_of_the_library_has_a_form()
    {
        Assert.Equal(Kinds(typeof(Surface)), Names(AnyJob.Forms.Surfaces.Types));
        Assert.Equal(Kinds(typeof(ILay)), Names(AnyJob.Forms.Lays.Types));
        Assert.Equal(Kinds(typeof(WeldSeam)), Names(LibraryWeldForms.Table.Types));
        Assert.Equal(Kinds(typeof(ICostItem)), Names(AnyJob.Forms.CostItems.Types));
    }

    [Fact]
    public void Every_kind_is_tried()
    {
        JobDocument document = AnyJob.Make(1);
        Assert.Equal(Names(AnyJob.Forms.Lays.Types), Names([.. document.Job.Lines.Select(static line => line.Lay.GetType()).Append(typeof(OwnLay)).Distinct()]));
        Assert.Equal(Names(AnyJob.Forms.Surfaces.Types), Names([.. document.Job.Lines.Select(static line => line.Lay.Surface.GetType()).Append(typeof(OwnSurface)).Distinct()]));
    }

    [Fact]
    public void What_has_no_form_is_refused_when_it_is_written()
    {
        JobDocument document = AnyJob.Make(2);
        ArgumentException lay = Assert.Throws<ArgumentException>(() => document.Write(new DocumentForms(lossLaws: [OwnLaw.Form])));
        Assert.Contains("a lay of type OwnLay", lay.Message, StringComparison.Ordinal);
        Assert.Contains("has no form and cannot be written", lay.Message, StringComparison.Ordinal);
        ArgumentException surface = Assert.Throws<ArgumentException>(() => document.Write(new DocumentForms(lays: [OwnLay.Form], lossLaws: [OwnLaw.Form])));
        Assert.Contains("a surface of type OwnSurface", surface.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kind_or_a_type_has_one_form()
    {
        Assert.Contains("Two forms of a surface are named 'pipe'", Assert.Throws<ArgumentException>(static () => new DocumentForms(
            [SurfaceForm.Of<OwnSurface>("pipe", static _ => null, static (_, _) => { })])).Message, StringComparison.Ordinal);
        Assert.Contains("StraightPipe has two forms: 'pipe' and 'tube'", Assert.Throws<ArgumentException>(static () => new DocumentForms(
            [SurfaceForm.Of<StraightPipe>("tube", static _ => null, static (_, _) => { })])).Message, StringComparison.Ordinal);
    }

    // Part by part, so that a failure says which.
    private static void Same(JobDocument document, JobDocument read)
    {
        Assert.Equal(document.Stocks, read.Stocks);
        Assert.Equal(document.Notes, read.Notes);
        Assert.Equal(document.Prices, read.Prices);
        Assert.Equal(document.Job.Rules, read.Job.Rules);
        Assert.Equal(document.RulesDocument, read.RulesDocument);
        Assert.Equal(document.Job.TakeOff, read.Job.TakeOff);
        foreach ((SurveyLine line, SurveyLine other) in document.Job.Lines.Zip(read.Job.Lines))
        {
            Assert.Equal(line.Lay.Surface, other.Lay.Surface);
            Assert.Equal(line.Lay, other.Lay);
            Assert.Equal(line.Exposure, other.Exposure);
            Assert.Equal(line.Steel, other.Steel);
            Assert.Equal(line.Welds, other.Welds);
            Assert.Equal(line.Needs, other.Needs);
            Assert.Equal(line, other);
        }
    }

    private static string[] Kinds(Type sort) =>
    [
        .. new[] { typeof(Surface).Assembly, typeof(OwnLay).Assembly }.SelectMany(static assembly => assembly.GetTypes())
            .Where(type => sort.IsAssignableFrom(type) && type is { IsAbstract: false } && (type.IsPublic || type.Namespace == typeof(OwnLay).Namespace))
            .Select(static type => type.Name).Order(StringComparer.Ordinal),
    ];

    private static string[] Names(IReadOnlyCollection<Type> types) => [.. types.Select(static type => type.Name).Order(StringComparer.Ordinal)];
}
