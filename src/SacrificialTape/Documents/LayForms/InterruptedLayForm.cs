using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>How the lays between bands that stay clear are read and written: one for every span, or each for itself.</summary>
internal static class InterruptedLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<InterruptedLay>("interrupted", Read, Write);

    private static InterruptedLay? Read(FormReader reader)
    {
        InterruptedPipe pipe = reader.Surface<InterruptedPipe>("surface");
        ValueList<ILay> spans = ValueList<ILay>.Empty;
        if (pipe is not null)
        {
            reader.CountSteps(pipe.Spans.Count);
            spans = reader.Has("everySpan") ? Every(reader, pipe) : Each(reader, pipe);
        }
        else
        {
            // Read without the pipe, so that the members are known; what they hold is looked at once the pipe is right.
            _ = reader.Has("everySpan") || reader.Has("spans");
        }

        return reader.Make(() => new InterruptedLay(pipe!, spans));
    }

    private static void Write(FormWriter writer, InterruptedLay lay)
    {
        writer.Surface("surface", lay.Pipe);
        if (lay.Spans.All(one => ReferenceEquals(one, lay.Spans[0])) && lay.Pipe.Spans.All(span => SurfaceBits.Same(span.Pipe, lay.Pipe.Spans[0].Pipe)))
        {
            writer.Lay("everySpan", lay.Spans[0], lay.Pipe.Spans[0].Pipe);
            return;
        }

        writer.Lays("spans", lay.Spans, [.. lay.Pipe.Spans.Select(static span => span.Pipe)]);
    }

    // A lay for each length of span; where one has faults the others would only repeat them.
    private static ValueList<ILay> Every(FormReader reader, InterruptedPipe pipe)
    {
        var made = new Dictionary<StraightPipe, ILay>();
        var spans = new List<ILay>(pipe.Spans.Count);
        foreach (PipeSpan span in pipe.Spans)
        {
            if (!made.TryGetValue(span.Pipe, out ILay? lay))
            {
                lay = reader.Lay("everySpan", span.Pipe);
                if (lay is null)
                {
                    break;
                }

                made.Add(span.Pipe, lay);
            }

            spans.Add(lay);
        }

        return new ValueList<ILay>(spans);
    }

    private static ValueList<ILay> Each(FormReader reader, InterruptedPipe pipe)
    {
        IReadOnlyList<DocumentNode> items = reader.Members.Items("spans");
        if (items.Count != pipe.Spans.Count)
        {
            reader.Context.Faults.Add(
                reader.Node.Members.GetValueOrDefault("spans") ?? reader.Node, $"The pipe has {pipe.Spans.Count} span(s), but {items.Count} lay(s) are given in 'spans'. For the same on all write 'everySpan'.");
            return ValueList<ILay>.Empty;
        }

        // Lays that differ are held against each other when their strips are gathered.
        reader.CountSteps((double)items.Count * items.Count);
        return new ValueList<ILay>(items.Select((item, i) => reader.ReadLay(item, pipe.Spans[i].Pipe)).OfType<ILay>());
    }
}
