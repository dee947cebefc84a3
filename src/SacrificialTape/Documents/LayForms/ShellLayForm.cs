using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay on a shell is read and written.</summary>
internal static class ShellLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<ShellLay>("shell", Read, Write);

    private static ShellLay? Read(FormReader reader)
    {
        Shell shell = reader.Surface<Shell>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        ShellDirection direction = reader.Word("direction", JobWords.ShellDirections);
        Length lapPastSeams = reader.Length("lapPastSeams");
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new ShellLay(shell, stock, direction, leastLap, lapPastSeams, choices));
    }

    private static void Write(FormWriter writer, ShellLay lay)
    {
        writer.Surface("surface", lay.Shell);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Word("direction", lay.Direction, JobWords.ShellDirections);
        writer.Length("lapPastSeams", lay.LapPastSeams);
        writer.Choices("choices", lay.Choices);
    }
}
