using System.ComponentModel;
using System.Diagnostics;

namespace BuckGen.References.Tests.Support;

/// <summary>An outside program that BuckGen is compared with.</summary>
/// <param name="Program">What is started.</param>
/// <param name="Probe">Arguments that show whether it is there, with all it needs.</param>
/// <param name="Remedy">How to install it.</param>
internal sealed record Reference(string Program, string[] Probe, string Remedy)
{
    /// <summary>Debian's own Python: another one earlier on the path would not see Debian's modules.</summary>
    public static Reference Python { get; } = new(
        "/usr/bin/python3", ["-c", "import ezdxf, shapely, scipy"],
        "apt-get install python3-ezdxf python3-shapely python3-scipy");

    public static Reference Librsvg { get; } = new("rsvg-convert", ["--version"], "apt-get install librsvg2-bin");

    public static Reference Gdal { get; } = new("ogrinfo", ["--version"], "apt-get install gdal-bin");

    public static Reference LibreCad { get; } = new("librecad", ["dxf2pdf", "--version"], "apt-get install librecad");

    public static Reference OpenScad { get; } = new("openscad", ["--version"], "apt-get install openscad");

    public static Reference DxfParser { get; } = new(
        "node", [RepositoryFolder.Script("count_entities.js")], "npm ci --prefix tests/BuckGen.References.Tests/Scripts");

    private static readonly bool Required = Environment.GetEnvironmentVariable("BUCKGEN_REQUIRE_REFERENCES") == "1";

    private readonly Lazy<bool> isThere = new(() => IsThere(Program, Probe));

    /// <summary>Skips the running test where the program is missing, or fails it where all references are asked for.</summary>
    public void Need()
    {
        if (isThere.Value) return;
        Miss($"{Program} is not here, or not all it needs: {Remedy}");
    }

    /// <summary>Skips the running test for what is missing, or fails it where all references are asked for.</summary>
    public static void Miss(string message)
    {
        if (Required) Assert.Fail(message);
        Assert.Skip(message);
    }

    /// <summary>Runs the program and returns what it printed.</summary>
    public ToolOutput Run(TimeSpan limit, params string[] arguments)
    {
        Need();
        return Start(Program, arguments, limit);
    }

    private static bool IsThere(string program, string[] probe)
    {
        try
        {
            return Start(program, probe, TimeSpan.FromSeconds(60)).ExitCode == 0;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }

    private static ToolOutput Start(string program, string[] arguments, TimeSpan limit)
    {
        using var home = new ScratchFolder();
        var start = new ProcessStartInfo(program, arguments);
        // A home of its own keeps settings of whoever runs the tests out of the judgement.
        start.Environment["HOME"] = home.Path;
        start.Environment["QT_QPA_PLATFORM"] = "offscreen";
        start.Environment["PYTHONDONTWRITEBYTECODE"] = "1";
        return ToolOutput.Capture(start, limit);
    }
}
