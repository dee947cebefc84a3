namespace SacrificialTape.Documents;

/// <summary>How a note is read and written.</summary>
internal static class JobNoteForm
{
    internal static JobNote? Read(FormReader reader)
    {
        string text = reader.Text("text");
        string? line = reader.OptionalText("line");
        return reader.Make(() => new JobNote(text, line));
    }

    internal static void Write(FormWriter writer, JobNote note)
    {
        writer.OptionalText("line", note.Tag);
        writer.Text("text", note.Text);
    }
}
