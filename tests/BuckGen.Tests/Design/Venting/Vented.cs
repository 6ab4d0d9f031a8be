using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;

namespace BuckGen.Tests.Design.Venting;

/// <summary>Vented bucks for the tests of this folder.</summary>
internal static class Vented
{
    public static readonly Stock Mdf6 = new("MDF 6", 6, 2000, 2000);

    public static BuckSpec Spec(BuckKind kind = BuckKind.Male, double depth = 24, PlenumKind? plenum = null) => new()
    {
        Kind = kind,
        Depth = depth,
        Stock = [Mdf6],
        Base = new(Mdf6, 20, Mdf6),
        Sheet = new SheetSpec { Gauge = 1 },
        Vents = new VentSpec(),
        Plenum = plenum is { } k ? new PlenumSpec(Mdf6, k) : null,
    };

    public static BuckDesign Design(Region region, BuckSpec spec) => BuckDesign.Create(Outline.FromRegion("test", region), spec);

    public static Region Rectangle(double width, double height) => Region.FromLoops([Loop.Rectangle(new(0, 0, width, height))]);

    /// <summary>The sign of the boathouse: letters with counters, gaps between islands.</summary>
    public static Region Sign()
    {
        var file = Path.Combine(Root(), "examples", "boathouse-sign", "outline.svg");
        return OutlineReader.Read(File.ReadAllBytes(file), "outline.svg").Region;
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "BuckGen.sln"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
