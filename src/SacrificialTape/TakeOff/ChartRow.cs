using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.TakeOff;

/// <summary>One pipe size under all stocked strips, with the one to take and why.</summary>
public sealed record ChartRow
{
    internal ChartRow(PipeSize size, ValueList<ChartCell> cells, ChartCell? recommended, string why)
    {
        this.Size = size;
        this.Cells = cells;
        this.Recommended = recommended;
        this.Why = why;
    }

    /// <summary>The pipe size.</summary>
    public PipeSize Size { get; }

    /// <summary>The strips that go round this pipe, narrow before wide.</summary>
    public ValueList<ChartCell> Cells { get; }

    /// <summary>The strip to take: the widest that breaks no rule, of equal widths the thinnest foil; null if there is none.</summary>
    public ChartCell? Recommended { get; }

    /// <summary>Why that one.</summary>
    public string Why { get; }

    /// <summary>Size and recommendation.</summary>
    public override string ToString() => $"NPS {this.Size.Nps}: {this.Why}";
}
