using System.Reflection;
using System.Reflection.Emit;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>
/// Tells a calculation from a stored value by its machine code: it does arithmetic, sums, calls a maths function, adds
/// quantities, or calls a kernel, itself or through anything of the same assembly that it calls.
/// </summary>
internal sealed class Calculations(Assembly assembly)
{
    // These turn a stored number into a quantity or a text; what they multiply by is a unit's factor.
    private static readonly Type[] UnitsOnly =
        [typeof(UnitConversions), typeof(StoredNumber), typeof(AcceptedRange), typeof(MeasureText), typeof(TradeUnits)];

    private static readonly OpCode[] Arithmetic =
    [
        OpCodes.Add, OpCodes.Add_Ovf, OpCodes.Add_Ovf_Un, OpCodes.Sub, OpCodes.Sub_Ovf, OpCodes.Sub_Ovf_Un,
        OpCodes.Mul, OpCodes.Mul_Ovf, OpCodes.Mul_Ovf_Un, OpCodes.Div, OpCodes.Div_Un, OpCodes.Rem, OpCodes.Rem_Un, OpCodes.Neg,
    ];

    private readonly Dictionary<MethodBase, bool> calculates = [];
    private readonly Dictionary<MethodBase, bool> callsKernel = [];

    internal static bool IsNumber(Type type)
    {
        Type bare = Nullable.GetUnderlyingType(type) ?? type;
        return bare == typeof(int) || bare == typeof(long) || bare == typeof(double)
            || (bare.IsValueType && !bare.IsEnum && (typeof(IQuantity).IsAssignableFrom(bare) || bare.Assembly == typeof(Measure).Assembly));
    }

    internal bool Calculates(MethodBase method) => this.Any(
        method,
        this.calculates,
        (code, called) => Arithmetic.Contains(code) || IsKernel(called) || called?.DeclaringType == typeof(Math)
            || (called?.DeclaringType == typeof(Enumerable) && called.Name is "Sum" or "Average")
            || (called?.Name.StartsWith("op_", StringComparison.Ordinal) == true && typeof(IQuantity).IsAssignableFrom(called.DeclaringType!)));

    internal bool CallsKernel(MethodBase method) => this.Any(method, this.callsKernel, static (_, called) => IsKernel(called));

    private static bool IsKernel(MethodBase? method) =>
        method?.DeclaringType?.Name.EndsWith("Kernel", StringComparison.Ordinal) == true;

    private bool Any(MethodBase given, Dictionary<MethodBase, bool> known, Func<OpCode, MethodBase?, bool> test)
    {
        MethodBase method = given is MethodInfo { IsGenericMethod: true } generic ? generic.GetGenericMethodDefinition() : given;
        if (known.TryGetValue(method, out bool answer))
        {
            return answer;
        }

        known[method] = false;
        byte[]? il = method.GetMethodBody()?.GetILAsByteArray();
        if (il is null || UnitsOnly.Contains(method.DeclaringType))
        {
            return false;
        }

        foreach (Instruction instruction in Instruction.Read(il))
        {
            MethodBase? called = instruction.Code.OperandType == OperandType.InlineMethod ? Resolve(method, instruction.Token) : null;
            if (test(instruction.Code, called)
                || (called is not null && called.Module.Assembly == assembly && this.Any(called, known, test)))
            {
                return known[method] = true;
            }
        }

        return false;
    }

    private static MethodBase? Resolve(MethodBase caller, int token) => caller.Module.ResolveMethod(
        token,
        caller.DeclaringType?.GetGenericArguments(),
        caller is MethodInfo { IsGenericMethodDefinition: true } ? caller.GetGenericArguments() : null);
}
