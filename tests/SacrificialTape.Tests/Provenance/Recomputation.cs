using NCalc;

namespace SacrificialTape.Tests.Provenance;

/// <summary>
/// Evaluates a step with an expression library that shares no code with the product, from the numbers the step shows.
/// </summary>
internal static class Recomputation
{
    private const double Allowance = 1e-9;

    internal static double Of(WorkingStep step)
    {
        var expression = new Expression(step.Formula.Expression);
        expression.Parameters["pi"] = Math.PI;
        for (int i = 0; i < step.Inputs.Count; i++)
        {
            expression.Parameters[step.Formula.Inputs[i].Name] = step.Inputs[i].Number;
        }

        One(expression, "sin", Math.Sin);
        One(expression, "cos", Math.Cos);
        One(expression, "tan", Math.Tan);
        One(expression, "asin", Math.Asin);
        One(expression, "acos", Math.Acos);
        One(expression, "atan", Math.Atan);
        One(expression, "exp", Math.Exp);
        One(expression, "ln", Math.Log);
        One(expression, "sqrt", Math.Sqrt);
        One(expression, "floor", static x => Math.Floor(x + (Math.Abs(x) * Allowance)));
        One(expression, "ceil", static x => Math.Ceiling(x - (Math.Abs(x) * Allowance)));
        Two(expression, "pow", Math.Pow);
        Two(expression, "min", Math.Min);
        Two(expression, "max", Math.Max);
        return Number(expression.Evaluate());
    }

    /// <summary>
    /// Whether two numbers agree to 1e-9, or, where a step subtracts nearly equal numbers, to a last-digit share of the
    /// largest number that went in: for an area from lengths, of the square of the longest.
    /// </summary>
    internal static bool Agrees(WorkingStep step, double recomputed)
    {
        double largest = step.Inputs.Where(input => input.Unit == step.Result.Unit).Select(static input => Math.Abs(input.Number)).DefaultIfEmpty(0).Max();
        if (step.Result.Unit == TradeUnit.SquareMeter)
        {
            double longest = step.Inputs.Where(static input => input.Unit == TradeUnit.Millimeter).Select(static input => Math.Abs(input.Number)).DefaultIfEmpty(0).Max();
            largest = Math.Max(largest, longest * longest / 1e6);
        }

        return Near.Same(step.Result.Number, recomputed, 1e-9, largest * 1e-13);
    }

    private static void One(Expression expression, string name, Func<double, double> function) =>
        expression.Functions[name] = arguments => function(Number(arguments.Evaluate(0)));

    private static void Two(Expression expression, string name, Func<double, double, double> function) =>
        expression.Functions[name] = arguments => function(Number(arguments.Evaluate(0)), Number(arguments.Evaluate(1)));

    private static double Number(object? value) => Convert.ToDouble(value, System.Globalization.CultureInfo.InvariantCulture);
}
