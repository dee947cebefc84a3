using System.Text;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>Collects the faults of one document and turns byte offsets into lines and columns.</summary>
internal sealed class FaultList
{
    private readonly ReadOnlyMemory<byte> utf8;
    private readonly string kind;
    private readonly int most;
    private readonly List<(long Offset, string Path, string Message)> faults = [];

    internal FaultList(ReadOnlyMemory<byte> utf8, string kind, int most)
    {
        this.utf8 = utf8;
        this.kind = kind;
        this.most = most;
    }

    internal int Count => this.faults.Count;

    internal void Add(DocumentNode node, string message) => this.Add(node.Offset, node.Path, message);

    internal void Add(long offset, string path, string message)
    {
        this.faults.Add((offset, path, message));
        if (this.faults.Count >= this.most)
        {
            this.faults.Add((offset, path, $"Reading ended here: {this.most} faults are enough."));
            throw this.Exception();
        }
    }

    internal void ThrowIfAny()
    {
        if (this.faults.Count > 0)
        {
            throw this.Exception();
        }
    }

    internal DocumentException Exception() => new(this.kind, new ValueList<DocumentFault>(this.Placed()));

    // One walk through the text for all faults, whose places rise.
    private IEnumerable<DocumentFault> Placed()
    {
        int line = 1;
        int lineStart = 0;
        int at = 0;
        foreach ((long offset, string path, string message) in this.faults.OrderBy(static fault => fault.Offset))
        {
            ReadOnlySpan<byte> text = this.utf8.Span;
            int end = (int)Math.Min(offset, text.Length);
            for (; at < end; at++)
            {
                if (text[at] == (byte)'\n')
                {
                    line++;
                    lineStart = at + 1;
                }
            }

            yield return new DocumentFault(path, line, Encoding.UTF8.GetCharCount(text[lineStart..end]) + 1, message);
        }
    }
}
