using SacrificialTape.Wrapping;

namespace SacrificialTape.Costing;

/// <summary>What decides how long the work takes: the kind of lay, how it is laid, and on what.</summary>
public sealed record LabourKind
{
    /// <summary>Describes a kind of work.</summary>
    /// <param name="lay">The kind of lay.</param>
    /// <param name="method">How the strip is laid.</param>
    /// <param name="surface">The kind of surface in the user's own word, for instance <c>pipe</c>; compared letter by letter.</param>
    /// <exception cref="ArgumentException">The word is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Lay or method is not defined.</exception>
    public LabourKind(StripPurpose lay, ApplicationMethod method, string surface)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(surface);
        this.Lay = Enum.IsDefined(lay)
            ? lay
            : throw new ArgumentOutOfRangeException(nameof(lay), lay, "Not a kind of lay known here.");
        this.Method = Enum.IsDefined(method)
            ? method
            : throw new ArgumentOutOfRangeException(nameof(method), method, "Not a method known here.");
        this.Surface = surface;
    }

    /// <summary>The kind of lay.</summary>
    public StripPurpose Lay { get; }

    /// <summary>How the strip is laid.</summary>
    public ApplicationMethod Method { get; }

    /// <summary>The kind of surface in the user's own word.</summary>
    public string Surface { get; }

    /// <summary>The kind in a few words.</summary>
    public override string ToString() => $"{Word(this.Lay)}, {(this.Method == ApplicationMethod.ByHand ? "by hand" : "wrapping head")}, {this.Surface}";

    // The words that files use too.
    private static string Word(StripPurpose lay) => lay switch
    {
        StripPurpose.Spiral => "spiral",
        StripPurpose.LevelTurn => "level turn",
        StripPurpose.Ring => "ring",
        StripPurpose.AlongPipe => "along pipe",
        StripPurpose.Weld => "weld",
        StripPurpose.AlongSection => "along section",
        StripPurpose.Edge => "edge",
        StripPurpose.CornerPatch => "corner patch",
        StripPurpose.Strap => "strap",
        StripPurpose.Washer => "washer",
        StripPurpose.Patch => "patch",
        _ => "other",
    };
}
