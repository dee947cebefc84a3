namespace SacrificialTape.PublishedValues;

/// <summary>The checks of one source, as one section of the page.</summary>
internal sealed record CheckGroup(string Title, string About, IReadOnlyList<PublishedCase> Cases);
