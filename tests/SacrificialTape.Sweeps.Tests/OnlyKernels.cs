using System.Reflection;
using System.Reflection.Emit;
using SacrificialTape.Tests.HouseRules;

namespace SacrificialTape.Sweeps.Tests;

/// <summary>Of what is internal to the core the package touches kernels, their terms and lanes alone.</summary>
public sealed class OnlyKernels
{
    [Fact]
    public void Everything_internal_that_is_touched_is_a_kernel_or_its_terms()
    {
        Type[] touched = [.. Touched(typeof(Sweeps.Batch.Column).Assembly)];
        Assert.Contains(touched, static type => type.Name == "LossKernel");
        Assert.Empty(touched.Where(static type => !MayBeTouched(type)).Select(static type => type.FullName));
    }

    [Fact]
    public void The_check_sees_something_else() =>
        Assert.Contains(typeof(Provenance.NoSteps), Touched(typeof(OnlyKernels).Assembly));

    private static bool MayBeTouched(Type type) =>
        type.IsVisible || type.Name.Split('`')[0] is var name
        && (name.EndsWith("Kernel", StringComparison.Ordinal) || name.EndsWith("Terms", StringComparison.Ordinal)
            || name.EndsWith("Lanes", StringComparison.Ordinal));

    // Types of the core that signatures, fields and method bodies name.
    private static HashSet<Type> Touched(Assembly assembly)
    {
        var found = new HashSet<Type>();
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (Type type in assembly.GetTypes())
        {
            Note(type.BaseType);
            Array.ForEach(type.GetInterfaces(), Note);
            Array.ForEach(type.GetFields(All), field => Note(field.FieldType));
            foreach (MethodBase method in type.GetMembers(All).OfType<MethodBase>())
            {
                Array.ForEach(method.GetParameters(), parameter => Note(parameter.ParameterType));
                if (method is MethodInfo { ReturnType: var returned })
                {
                    Note(returned);
                }

                if (method.GetMethodBody() is { } body && body.GetILAsByteArray() is { } il)
                {
                    foreach (LocalVariableInfo local in body.LocalVariables)
                    {
                        Note(local.LocalType);
                    }

                    foreach (Instruction instruction in Instruction.Read(il).Where(static one => one.Token != 0 && one.Code.OperandType != OperandType.InlineSig))
                    {
                        MemberInfo? member = method.Module.ResolveMember(
                            instruction.Token, type.GetGenericArguments(), method is MethodInfo { IsGenericMethod: true } ? method.GetGenericArguments() : null);
                        Note(member as Type ?? member?.DeclaringType);
                    }
                }
            }
        }

        return found;

        void Note(Type? type)
        {
            if (type is null || type.IsGenericParameter)
            {
                return;
            }

            if (type.HasElementType)
            {
                Note(type.GetElementType());
                return;
            }

            Array.ForEach(type.GetGenericArguments(), Note);
            if (type.Assembly == typeof(Quantities.Measure).Assembly)
            {
                found.Add(type.IsGenericType ? type.GetGenericTypeDefinition() : type);
            }
        }
    }
}
