using BuckGen.Cli.Terminals;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Svg;

namespace BuckGen.Cli.Commands;

/// <summary>Writes a picture to the file that an option names for it.</summary>
internal static class PictureFile
{
    public static void Write(string option, string path, Picture picture)
    {
        if (string.IsNullOrWhiteSpace(path)) throw new UsageException($"{option} is empty; name the picture to write.");
        if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; {option} names a file.");
        // An earlier picture may be replaced; a drawing may not.
        if (File.Exists(path) && !SvgPicture.IsOurs(File.ReadAllBytes(path)))
            throw new UsageException($"{path} exists and is not a picture from BuckGen; choose another name or remove it first.");
        AtomicFile.Write(path, SvgPicture.Write(picture).AsSpan(), replace: true);
    }
}
