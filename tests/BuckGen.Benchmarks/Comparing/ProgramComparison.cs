using BuckGen.Geometry.Polygonal;
using BuckGen.Intake.Reading;

namespace BuckGen.Benchmarks.Comparing;

/// <summary>
/// The program from its start to its end, against the script that a user would write for plain layers, and against a program that
/// does nothing.
/// </summary>
internal static class ProgramComparison
{
    // Built as this is; only a Release build is compiled ahead.
    private static readonly string Configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;

    private static readonly string Program =
        Path.Combine(Peers.Root, $"src/BuckGen.Cli/bin/{Configuration}/net10.0/buckgen.dll");

    /// <summary>Measures and prints a row for each command.</summary>
    /// <param name="rounds">How often each is run.</param>
    /// <param name="isShort">True to leave out the sign without its prediction.</param>
    /// <param name="temporary">A folder for what is written.</param>
    public static void Run(int rounds, bool isShort, string temporary)
    {
        if (!File.Exists(Program))
        {
            Console.WriteLine($"| buck, make | | build the program: dotnet build -c {Configuration} src/BuckGen.Cli | | |");
            return;
        }

        AgainstScript(rounds, isShort, temporary);
        if (EmptyProgram(temporary) is { } empty)
            foreach (var option in (string[])["--help", "--version"])
                Comparison.Alternate($"buckgen {option}, {Configuration}", "empty program", rounds,
                    () => Peers.Timed("dotnet", Program, option), () => Peers.Timed("dotnet", empty));
    }

    private static void AgainstScript(int rounds, bool isShort, string temporary)
    {
        if (Peers.Python() is not { } python)
        {
            Console.WriteLine("| buck, make | | a script: install shapely and ezdxf for Python | | |");
            return;
        }

        var (drawing, result, layers) = (Path.Combine(temporary, "bumpy.svg"), Path.Combine(temporary, "buck"),
            Path.Combine(temporary, "layers"));
        File.WriteAllBytes(drawing, BumpyOutline.Svg(5_000));
        var bumpy = Peers.WriteRings(Path.Combine(temporary, "bumpy.txt"), [BumpyOutline.Points(5_000)]);
        Comparison.Alternate($"buck, 5000 vertices, 36 mm, all its files, {Configuration}", "script, plain layers", rounds,
            () => Peers.Timed("dotnet", Program, "buck", drawing, "--depth", "36mm", "--stock", "12mm", "--out", result),
            () => Script(python, bumpy, layers, 36, 12));

        var sign = Path.Combine(Peers.Root, "examples/boathouse-sign");
        var outline = OutlineReader.Read(File.ReadAllBytes(Path.Combine(sign, "outline.svg")), "outline.svg").Region;
        var rings = Peers.WriteRings(
            Path.Combine(temporary, "sign.txt"), outline.Loops.Select(l => PolygonConversion.Flattened(l, 0.01)));
        // The same job, set not to predict the wall.
        var plain = Directory.CreateDirectory(Path.Combine(temporary, "sign")).FullName;
        File.Copy(Path.Combine(sign, "outline.svg"), Path.Combine(plain, "outline.svg"));
        File.WriteAllText(Path.Combine(plain, "job.toml"),
            File.ReadAllText(Path.Combine(sign, "job.toml")) + "\n[forming]\npredict = false\n");
        (string, string)[] signs = [(plain, "without prediction"), (sign, "with its prediction")];
        foreach (var (folder, words) in signs.Skip(isShort ? 1 : 0))
            Comparison.Alternate($"make, boathouse sign {words}, {Configuration}", "script, plain layers", rounds,
                () => Peers.Timed("dotnet", Program, "make", Path.Combine(folder, "job.toml"), "--out", result + "-sign"),
                () => Script(python, rings, layers, 12, 6));
    }

    private static double Script(string python, string rings, string folder, int depth, int board) => Peers.Timed(
        python, Path.Combine(Peers.Folder, "plain_layers.py"), rings, folder, $"{depth}", $"{board}", "5");

    /// <summary>A console program as the SDK makes it; null when it can't be made here.</summary>
    private static string? EmptyProgram(string temporary)
    {
        var folder = Path.Combine(temporary, "empty");
        return Peers.Run("dotnet", ["new", "console", "-o", folder], out _) == 0
            && Peers.Run("dotnet", ["build", folder, "-c", "Release", "-o", Path.Combine(folder, "out")], out _) == 0
                ? Path.Combine(folder, "out", "empty.dll") : null;
    }
}
