using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using BuckGen.Geometry;

namespace BuckGen.Benchmarks.Comparing;

/// <summary>Other programs that do a part of the work.</summary>
internal static class Peers
{
    private static readonly string Here = Path.GetDirectoryName(SourceFile())!;

    /// <summary>Where their scripts lie.</summary>
    public static string Folder => Path.Combine(Here, "Peers");

    /// <summary>The repository.</summary>
    public static string Root => Path.GetFullPath(Path.Combine(Here, "../../.."));

    /// <summary>The script for Node.js, when what it needs is installed; else null.</summary>
    public static string? NodeScript() => Directory.Exists(Path.Combine(Folder, "node_modules", "clipper2-wasm"))
        ? Path.Combine(Folder, "ten_offsets.cjs") : null;

    /// <summary>A Python that has what the script needs; null when there is none.</summary>
    public static string? Python() => Array.Find(["python3", "/usr/bin/python3"], CanRunScript);

    private static bool CanRunScript(string python) => Run(python, ["-c", "import shapely, ezdxf"], out _) == 0;

    /// <summary>Runs a program to its end; its exit code, or -1 when it can't be started.</summary>
    public static int Run(string program, string[] arguments, out string output)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments)
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                WorkingDirectory = Root,
            })!;
            process.BeginErrorReadLine();
            output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            output = "";
            return -1;
        }
    }

    /// <summary>Wall time of a program from start to end, ms.</summary>
    public static double Timed(string program, params string[] arguments)
    {
        var watch = Stopwatch.StartNew();
        var code = Run(program, arguments, out var output);
        return code == 0 ? watch.Elapsed.TotalMilliseconds
            : throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {code}. {output}");
    }

    /// <summary>Writes rings as the scripts read them: one a line, x and y in turn.</summary>
    public static string WriteRings(string file, IEnumerable<IEnumerable<Vec2>> rings)
    {
        File.WriteAllLines(file, rings.Select(r =>
            string.Join(' ', r.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:F4} {p.Y:F4}")))));
        return file;
    }

    private static string SourceFile([CallerFilePath] string file = "") => file;
}
