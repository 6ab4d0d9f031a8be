using System.Collections.Immutable;
using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Intake.Catalogs;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen catalog [ID]: known stocks and plastics with the sources of their figures.</summary>
internal static class CatalogCommand
{
    public static HelpedCommand Create(Terminal terminal)
    {
        var id = new Argument<string?>("ID")
        {
            Description = "Only this stock or plastic, in full detail.",
            Arity = ArgumentArity.ZeroOrOne
        }
            .WithCompletions(() => CatalogFiles.Stocks().Concat(CatalogFiles.Plastics()));
        var command = new HelpedCommand("catalog", CommandGroup.Setup, "List known stocks and plastics, each with its sources.")
        {
            Examples = ["buckgen catalog", "buckgen catalog petg", "buckgen catalog mdf-12 --json"],
            Notes =
                """
                A part may be taken off the buck when its hottest place is colder than "set-temperature". Keep that below "heat-deflection" of the data sheet (at 1.8 MPa); for plastics that melt, such as PP and HDPE, below "heat-deflection-light" (at 0.45 MPa).

                A file of your own adds to the catalog, or replaces what has the same id. Name it with --catalog, or in a job file by catalog = "my-catalog.toml". "like" takes what you don't give from another entry:
                  [[stock]]
                  id = "mdf-12"
                  like = "mdf-12"
                  thickness = { value = "11.8mm", source = "measured" }

                  [[plastic]]
                  id = "my-petg"
                  like = "petg"
                  name = "PETG of my supplier"
                  source = "data sheet of 2024"
                  forming-normal = [140, 150]
                  shrinkage = 0.4
                  heat-deflection = 64
                  set-temperature = 62
                """,
        };
        command.Add(id);
        return command.WhenNamed(() => Complete(command, id, terminal));
    }

    private static void Complete(HelpedCommand command, Argument<string?> id, Terminal terminal)
    {
        var (json, file, plugins) = (RunOptions.JsonOption(), CatalogFiles.Option(), new PluginOptions());
        command.Add(OptionGroup.Output, json);
        command.Add(OptionGroup.Boards, file);
        plugins.AddTo(command);
        command.SetAction(parsed =>
        {
            var catalog = CatalogFiles.Read(parsed.GetValue(file), plugins.Extensions(parsed, terminal).Catalog);
            var word = parsed.GetValue(id);
            var entry = word is null ? null : catalog.FindEntry(word)
                ?? throw new UsageException(
                    $"'{word}' is not in the catalog; it holds {string.Join(", ", Entries(catalog).Select(e => e.Id))}.");
            if (parsed.GetValue(json)) terminal.WriteJson(Json(catalog, entry));
            else if (entry is not null) EntryPrinter.Print(terminal.Printer(), entry);
            else CatalogPrinter.Print(terminal.Printer(), catalog);
            return ExitStatus.Done;
        });
    }

    private static IEnumerable<CatalogEntry> Entries(Catalog catalog) => catalog.Stock.Concat<CatalogEntry>(catalog.Plastic);

    private static ImmutableArray<byte> Json(Catalog catalog, CatalogEntry? entry) => SummaryJson.Write(entry is null
        ? catalog
        : new() { Stock = [.. catalog.Stock.Where(s => s == entry)], Plastic = [.. catalog.Plastic.Where(p => p == entry)] });
}
