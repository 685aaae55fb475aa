namespace Saponify.Cli;

/// <summary>Writes a file whole or not at all: a new one takes the place of the old one.</summary>
internal static class WholeFile
{
    internal static void Write(string path, byte[] bytes)
    {
        string next = path + ".new";
        File.WriteAllBytes(next, bytes);
        File.Move(next, path, overwrite: true);
    }
}
