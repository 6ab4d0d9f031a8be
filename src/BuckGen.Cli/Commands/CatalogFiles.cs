using System.CommandLine;
using BuckGen.Cli.Terminals;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Cli.Commands;

/// <summary>Catalog files of the user's own.</summary>
internal static class CatalogFiles
{
    public static Option<string?> Option() => new("--catalog")
    {
        Description = "A catalog file of your own, added to the built-in one; 'buckgen catalog --help' shows how to write one.",
        HelpName = "FILE",
    };

    /// <summary>The words for the stocks that are built in.</summary>
    public static IEnumerable<string> Stocks() => Catalog.BuiltIn.Stock.Select(s => s.Id);

    /// <summary>The words for the plastics that are built in.</summary>
    public static IEnumerable<string> Plastics() => Catalog.BuiltIn.Plastic.Select(p => p.Id);

    /// <summary>The catalog, with the file's entries added when there is a file.</summary>
    public static Catalog Read(string? path, Catalog onto)
    {
        if (path is null) return onto;
        if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; name the catalog file itself.");
        if (!File.Exists(path)) throw new UsageException($"{path} does not exist; check the name of the catalog file.");
        return CatalogFile.Read(File.ReadAllText(path), Path.GetFileName(path), onto);
    }
}
