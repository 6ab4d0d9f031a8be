using BuckGen.Pictures;

namespace BuckGen.Cli.Commands;

/// <summary>Writes a picture to the file that was named for it.</summary>
internal static class PictureFile
{
    public static void Write(string path, Picture picture)
    {
        if (string.IsNullOrWhiteSpace(path)) throw new UsageException("--svg is empty; name the picture to write.");
        if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; --svg names a file.");
        // An earlier picture may go; a drawing may not.
        if (File.Exists(path) && !SvgPicture.IsOurs(File.ReadAllBytes(path)))
            throw new UsageException($"{path} exists and is no picture of BuckGen's; choose another name or remove it first.");
        File.WriteAllBytes(path, [.. SvgPicture.Write(picture)]);
    }
}
