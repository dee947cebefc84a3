using SacrificialTape.Fuzz;
using SharpFuzz;

switch (args)
{
    case ["seeds", string folder]:
        Seeds.Write(folder);
        break;
    case ["read", string file]: // what a run has found, once more
        Target.Read(File.ReadAllBytes(file));
        Console.WriteLine("no unhandled exception");
        break;
    default:
        Fuzzer.Run(static stream =>
        {
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            Target.Read(bytes.ToArray());
        });
        break;
}
