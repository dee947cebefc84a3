using SacrificialTape.Quantities;

namespace SacrificialTape.Provenance;

/// <summary>A formula as the workings show it: result, expression, symbols and basis.</summary>
/// <remarks>
/// The expression is plain arithmetic with the functions <c>sin cos tan asin acos atan
/// sqrt pow exp ln min max floor ceil</c>;
/// angles in them are in radians, <c>pi</c> is the number, <c>floor</c> and <c>ceil</c> carry the library's relative
/// allowance of 1e-9. A test evaluates it from the numbers shown and must get the number shown.
/// </remarks>
public sealed record Formula
{
    /// <summary>Describes a formula.</summary>
    /// <param name="id">Short name, unique in the library.</param>
    /// <param name="result">What it gives.</param>
    /// <param name="expression">Its right-hand side in plain text.</param>
    /// <param name="tex">Its right-hand side in TeX.</param>
    /// <param name="basis">On what it rests.</param>
    /// <param name="inputs">The symbols of the expression.</param>
    /// <exception cref="ArgumentException">One of the texts is empty.</exception>
    public Formula(string id, Symbol result, string expression, string tex, Basis basis, IEnumerable<Symbol> inputs)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentException.ThrowIfNullOrWhiteSpace(expression);
        ArgumentException.ThrowIfNullOrWhiteSpace(tex);
        ArgumentNullException.ThrowIfNull(basis);
        this.Id = id;
        this.Result = result;
        this.Expression = expression;
        this.Tex = tex;
        this.Basis = basis;
        this.Inputs = inputs.Listed();
    }

    /// <summary>Short name, unique in the library.</summary>
    public string Id { get; }

    /// <summary>What it gives.</summary>
    public Symbol Result { get; }

    /// <summary>The right-hand side in plain text.</summary>
    public string Expression { get; }

    /// <summary>The right-hand side in TeX.</summary>
    public string Tex { get; }

    /// <summary>On what it rests.</summary>
    public Basis Basis { get; }

    /// <summary>The symbols of the expression.</summary>
    public ValueList<Symbol> Inputs { get; }

    /// <summary>Result and expression, for instance <c>p = w - o</c>.</summary>
    public override string ToString() => $"{this.Result.Name} = {this.Expression}";

    /// <summary>The same formula on another basis: the form is published, a number in it is the user's own.</summary>
    internal Formula RestingOn(Basis basis) => basis == this.Basis
        ? this
        : new(this.Id, this.Result, this.Expression, this.Tex, basis, this.Inputs);
}
