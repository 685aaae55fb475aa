using Saponify.Fuzz;
using SharpFuzz;

// Saponify.Fuzz TARGET: what AFL++ starts over and over
if (args.Length != 1 || !Readers.All.TryGetValue(args[0], out Action<byte[]>? reader))
{
    Console.Error.WriteLine("One of: " + string.Join(", ", Readers.All.Keys));
    return 64;
}
Fuzzer.OutOfProcess.Run(stream =>
{
    using MemoryStream bytes = new();
    stream.CopyTo(bytes);
    reader(bytes.ToArray());
});
return 0;
