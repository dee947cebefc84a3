namespace SacrificialTape.Reports.Blocks;

/// <summary>One step: its name, what is to be done, and whether the crew waits there for a signature.</summary>
internal sealed record ListItem(string Name, string Text, bool Hold = false);
