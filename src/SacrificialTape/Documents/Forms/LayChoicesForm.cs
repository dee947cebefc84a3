using SacrificialTape.Wrapping;

namespace SacrificialTape.Documents;

/// <summary>How the choices of a lay are read and written. Laps and wander are always stated: a default of the library may change.</summary>
internal static class LayChoicesForm
{
    internal static LayChoices? Read(FormReader reader)
    {
        UnitsNet.Length endLap = reader.Length("endLap");
        UnitsNet.Length wander = reader.Length("handWander");
        int passes = reader.OptionalCount("passes", 1);
        ApplicationMethod method = reader.OptionalWord("method", JobWords.Methods, ApplicationMethod.ByHand);
        return reader.Make(() => new LayChoices(endLap, wander, passes, method));
    }

    internal static void Write(FormWriter writer, LayChoices choices)
    {
        writer.Length("endLap", choices.EndLap);
        writer.Length("handWander", choices.HandWander);
        if (choices.Passes != 1)
        {
            writer.Count("passes", choices.Passes);
        }

        writer.OptionalWord("method", choices.Method, JobWords.Methods, ApplicationMethod.ByHand);
    }
}
