using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>A document could not be read. It holds every fault that was found, not only the first.</summary>
/// <remarks>Faults of the JSON text itself end the reading, so of those only the first is found.</remarks>
public sealed class DocumentException : FormatException
{
    /// <summary>Makes an exception without faults; a reader never throws such a one.</summary>
    public DocumentException()
        : this("The document has faults.")
    {
    }

    /// <summary>Makes an exception without faults; a reader never throws such a one.</summary>
    /// <param name="message">What is wrong.</param>
    public DocumentException(string message)
        : base(message) => this.Faults = ValueList<DocumentFault>.Empty;

    /// <summary>Makes an exception without faults; a reader never throws such a one.</summary>
    /// <param name="message">What is wrong.</param>
    /// <param name="innerException">What caused it.</param>
    public DocumentException(string message, Exception innerException)
        : base(message, innerException) => this.Faults = ValueList<DocumentFault>.Empty;

    internal DocumentException(string kind, ValueList<DocumentFault> faults)
        : base($"The {kind} has {faults.Count} fault(s):\n{string.Join('\n', faults)}") => this.Faults = faults;

    /// <summary>The faults, in the order of their places.</summary>
    public ValueList<DocumentFault> Faults { get; }
}
