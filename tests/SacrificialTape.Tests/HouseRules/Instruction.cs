using System.Reflection.Emit;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>One instruction of a method body: what it does and the metadata token it names, 0 when it names none.</summary>
internal readonly record struct Instruction(OpCode Code, int Token)
{
    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes).GetFields()
        .Select(static field => (OpCode)field.GetValue(null)!)
        .ToDictionary(static code => code.Value);

    internal static IEnumerable<Instruction> Read(byte[] il)
    {
        int at = 0;
        while (at < il.Length)
        {
            short value = il[at++];
            if (value == 0xFE)
            {
                value = (short)(0xFE00 | il[at++]);
            }

            OpCode code = Codes[value];
            int token = code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType
                or OperandType.InlineTok or OperandType.InlineSig ? BitConverter.ToInt32(il, at) : 0;
            yield return new Instruction(code, token);
            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(il, at)),
                _ => 4,
            };
        }
    }
}
