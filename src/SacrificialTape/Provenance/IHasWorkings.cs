namespace SacrificialTape.Provenance;

/// <summary>A result that can show how it was worked out, with the source of each step.</summary>
public interface IHasWorkings
{
    /// <summary>Runs the calculation again and notes each step.</summary>
    Workings ShowWorkings();
}
