using SacrificialTape.Contact;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a contact window at its place is read and written.</summary>
internal static class ContactWindowForm
{
    internal static ContactWindow? Read(FormReader reader)
    {
        Length along = reader.Length("along");
        Length around = reader.Length("around");
        if (reader.Has("diameter"))
        {
            Length diameter = reader.Length("diameter");
            return reader.Make(() => ContactWindow.Disc(along, around, diameter));
        }

        Length extentAlong = reader.Length("extentAlong");
        Length extentAround = reader.Length("extentAround");
        return reader.Make(() => ContactWindow.Rectangle(along, around, extentAlong, extentAround));
    }

    internal static void Write(FormWriter writer, ContactWindow window)
    {
        writer.Length("along", window.Along);
        writer.Length("around", window.Around);
        if (window.IsRound)
        {
            writer.Length("diameter", window.ExtentAlong);
        }
        else
        {
            writer.Length("extentAlong", window.ExtentAlong);
            writer.Length("extentAround", window.ExtentAround);
        }
    }
}
