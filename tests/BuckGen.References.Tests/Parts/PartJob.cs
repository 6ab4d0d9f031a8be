namespace BuckGen.References.Tests.Parts;

/// <summary>A job that orders a finished part.</summary>
/// <param name="Name">Its folder.</param>
/// <param name="Drawing">The drawing.</param>
/// <param name="Text">The job file, without what all jobs have.</param>
/// <param name="Tail">The last tables of the job file.</param>
internal sealed record PartJob(string Name, PartDrawing Drawing, string Text, string Tail = PartJob.Unpredicted)
{
    /// <summary>No prediction: the wall is the mean of the whole sheet.</summary>
    public const string Unpredicted = "[forming]\npredict = false\n";

    /// <summary>The whole job file.</summary>
    public string File => $"title = \"Heron Reach Boathouse: {Name}\"\n[outline]\nfile = \"outline.svg\"\n{Text}\n{Tail}";

    /// <summary>What the shop of the boathouse makes in a week.</summary>
    public static IReadOnlyList<PartJob> All { get; } =
    [
        // The ring is left open: the program chooses its boards.
        new("tackle-box", PartDrawing.RoundedRectangle(120, 80, 10), """
            [buck]
            draft = "5deg"
            [part]
            depth = "48mm"
            [sheet]
            plastic = "petg"
            gauge = "1mm"
            [former]
            frame = ["400mm", "300mm"]
            [jig]
            [[stock]]
            name = "birch 12"
            thickness = "11.9mm"
            [[stock]]
            name = "birch 4"
            thickness = "3.8mm"
            """),
        // The flange stays; the shrinkage is that of the plastic in a cavity.
        new("bait-tray", PartDrawing.RoundedRectangle(150, 100, 18), """
            [buck]
            kind = "female"
            draft = "3deg"
            steps = "inside"
            [part]
            depth = "30mm"
            [sheet]
            plastic = "pp"
            gauge = "0.75mm"
            [former]
            frame = ["400mm", "300mm"]
            [[stock]]
            name = "birch 9"
            thickness = "9mm"
            [[stock]]
            name = "grey card"
            thickness = "1mm"
            """),
        new("lantern-cover", PartDrawing.InchRectangle(5, 4, 0.75), """
            [buck]
            draft = "8deg"
            steps = "middle"
            shrinkage = 0
            depth-tolerance = "1/16in"
            [part]
            depth = "2 1/4in"
            drawn = "outside"
            cut-height = "1/4in"
            [sheet]
            gauge = "0.06in"
            [former]
            frame = ["16in", "12in"]
            [[stock]]
            name = "half-inch ply"
            thickness = "0.48in"
            [[stock]]
            name = "eighth-inch ply"
            thickness = "0.12in"
            """),
        new("door-letters", PartDrawing.Letters(70, 30), """
            [buck]
            draft = "4deg"
            shrinkage = 0.4
            [part]
            depth = "18mm"
            drawn = "outside"
            at = "face"
            [sheet]
            gauge = "0.5mm"
            [former]
            frame = ["400mm", "200mm"]
            [[stock]]
            name = "MDF 3"
            thickness = "3mm"
            """),
        new("heron-mask", PartDrawing.Mask(160, 210), """
            [buck]
            draft = "6deg"
            shrinkage = 0.5
            [part]
            depth = "40mm"
            drawn = "outside"
            at = "face"
            [sheet]
            gauge = "1mm"
            [former]
            frame = ["400mm", "400mm"]
            [jig]
            trim-height = "15mm"
            [[stock]]
            name = "birch 9"
            thickness = "9.1mm"
            [[stock]]
            name = "birch 6"
            thickness = "5.9mm"
            """),
        new("otter-mask", PartDrawing.Oval(140, 180), """
            [buck]
            kind = "female"
            draft = "10deg"
            shrinkage = 0.7
            [part]
            depth = "45mm"
            at = "face"
            cut-height = "5mm"
            [sheet]
            gauge = "2mm"
            [former]
            frame = ["400mm", "400mm"]
            [[stock]]
            name = "MDF 6"
            thickness = "6mm"
            [[stock]]
            name = "grey card"
            thickness = "1mm"
            """),
        new("float-box", PartDrawing.RoundedRectangle(100, 100, 20), """
            [buck]
            kind = "female"
            draft = "4deg"
            shrinkage = 0
            [part]
            depth = "36mm"
            drawn = "outside"
            [sheet]
            gauge = "1.2mm"
            [former]
            frame = ["300mm", "300mm"]
            [jig]
            trim-height = "18mm"
            [[stock]]
            name = "MDF 9"
            thickness = "9mm"
            [[stock]]
            name = "grey card"
            thickness = "1.3mm"
            """),
        new("chart-tray", PartDrawing.InchRectangle(7, 5, 1), """
            [buck]
            kind = "female"
            draft = "7deg"
            steps = "middle"
            shrinkage = 0.3
            [part]
            depth = "1.5in"
            drawn = "outside"
            at = "face"
            [sheet]
            gauge = "0.04in"
            [former]
            frame = ["16in", "12in"]
            [[stock]]
            name = "quarter-inch ply"
            thickness = "0.23in"
            [[stock]]
            name = "veneer ply"
            thickness = "1/40in"
            """),
        new("oar-letters", PartDrawing.Letters(90, 40), """
            [buck]
            draft = "3deg"
            steps = "inside"
            corners = "mitre"
            shrinkage = 0.6
            [part]
            depth = "20mm"
            at = "face"
            cut-height = "4mm"
            [sheet]
            gauge = "0.8mm"
            [former]
            frame = ["500mm", "250mm"]
            [[stock]]
            name = "MDF 6"
            thickness = "6mm"
            """),
        // Scaled to the ordered size; a ring of one board stands on the flange.
        new("rope-box", PartDrawing.RoundedRectangle(60, 40, 6), """
            [buck]
            draft = "5deg"
            shrinkage = 0
            [part]
            depth = "34.5mm"
            size = ["150mm", "100mm"]
            [base]
            stock = "MDF 12"
            under = "MDF 12"
            [sheet]
            gauge = "1.5mm"
            [former]
            frame = ["400mm", "300mm"]
            [jig]
            trim-height = "12mm"
            [[stock]]
            name = "MDF 12"
            thickness = "12mm"
            """),
        new("rudder-tray", PartDrawing.RoundedRectangle(130, 90, 25), """
            [buck]
            kind = "female"
            draft = "6deg"
            steps = "middle"
            shrinkage = 1
            [part]
            depth = "40mm"
            [base]
            stock = "MDF 12"
            [sheet]
            gauge = "1mm"
            [former]
            frame = ["400mm", "300mm"]
            [jig]
            trim-height = "12mm"
            [[stock]]
            name = "MDF 12"
            thickness = "12mm"
            [[stock]]
            name = "grey card"
            thickness = "1mm"
            """),
        // The wall is predicted; the ordered side is the one that touches the wood.
        new("seat-tray", PartDrawing.RoundedRectangle(110, 90, 15), """
            [buck]
            draft = "5deg"
            steps = "middle"
            shrinkage = 0.5
            [part]
            depth = "24mm"
            [sheet]
            gauge = "1mm"
            [former]
            frame = ["300mm", "300mm"]
            [[stock]]
            name = "MDF 6"
            thickness = "6mm"
            """, ""),
    ];

    /// <summary>Parts with lids: one of each fit.</summary>
    public static IReadOnlyList<PartJob> WithLids { get; } =
    [
        WithLid("over", "clearance = \"0.3mm\"", "drawn = \"inside\"", "5deg", "[jig]"),
        WithLid("into", "clearance = \"0.4mm\"\ndraft = \"3deg\"", "drawn = \"outside\"", "4deg", ""),
        WithLid("flush", "clearance = \"0.2mm\"", "drawn = \"inside\"\ncut-height = \"8mm\"", "3deg", ""),
    ];

    private static PartJob WithLid(string fit, string lid, string part, string draft, string jig) =>
        new($"lid-{fit}", PartDrawing.RoundedRectangle(120, 80, 14), $"""
            [buck]
            draft = "{draft}"
            [part]
            depth = "40mm"
            {part}
            [lid]
            fit = "{fit}"
            skirt = "10mm"
            {lid}
            [sheet]
            plastic = "petg"
            gauge = "1mm"
            [former]
            frame = ["400mm", "300mm"]
            {jig}
            [[stock]]
            name = "birch 12"
            thickness = "11.9mm"
            [[stock]]
            name = "birch 4"
            thickness = "3.8mm"
            [[stock]]
            name = "grey card"
            thickness = "1mm"
            """);
}
