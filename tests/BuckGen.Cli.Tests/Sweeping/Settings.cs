namespace BuckGen.Cli.Tests.Sweeping;

/// <summary>Random options of the commands that make something of a drawing, most of them legal.</summary>
internal static class Settings
{
    private static readonly string[] Commands = ["buck", "buck", "buck", "jig", "vents", "blank", "form", "check", "inspect"];

    /// <summary>A command with its options.</summary>
    /// <param name="dice">The choices.</param>
    /// <param name="size">Width of what is drawn, mm.</param>
    public static string[] CreateRandom(RandomSource dice, double size)
    {
        var command = dice.One(Commands);
        if (command == "inspect")
            return [command, .. Maybe(dice, 0.3, "--tolerance", dice.Length(0.0005, 1)),
                .. Maybe(dice, 0.3, "--join", dice.Length(0.001, 5)),
                .. Maybe(dice, 0.3, "--min-loop-width", dice.Length(0.001, 20))];
        var thick = dice.Size(0.3, 60);
        // Few boards mostly, so that a run stays short.
        var boards = dice.Chance(0.1) ? 40 : 8;
        var depth = Math
            .Min(dice.Chance(0.6) ? size * dice.Between(0.02, 1.5) : dice.Size(0.1, 1000), Math.Min(1000, boards * thick));
        var (withBase, withVents) = (command != "buck" || dice.Chance(0.5), command == "vents" || dice.Chance(0.4));
        var withPart = dice.Chance(0.3);
        List<string> all =
        [
            command, "--depth", RandomSource.Text(Math.Max(0.1, depth)) + "mm", "--stock", RandomSource.Text(thick) + "mm",
            .. Maybe(dice, 0.3, RandomSource.Text(dice.Size(0.3, 60)) + "mm"),
            .. Maybe(dice, 0.6, "--draft",
                RandomSource.Text(dice.Chance(0.2) ? -dice.Size(0.1, 45) : dice.One(0, dice.Size(0.1, 45), dice.Size(1, 15)))
                    + "deg"),
            .. Maybe(dice, 0.5, "--kind", dice.One("male", "female")),
            .. Maybe(dice, 0.5, "--steps", dice.One("outside", "inside", "middle")),
            .. Maybe(dice, 0.5, "--corners", dice.One("round", "mitre")),
            .. Maybe(dice, 0.2, "--mitre-limit", RandomSource.Text(dice.Between(1, 20))),
            .. Maybe(dice, withPart ? 0 : 0.5, "--outline-at", dice.One("face", "base")),
            .. Maybe(dice, 0.2, "--shrinkage", RandomSource.Text(dice.Between(0, 10)) + "%"),
            .. Maybe(dice, 0.3, "--block-margin", dice.Length(0.1, 500)),
            .. Maybe(dice, 0.3, "--dowel", dice.Length(1, 50)),
            .. Maybe(dice, 0.3, "--machine", dice.One("laser", "router")),
            .. Maybe(dice, 0.3, "--kerf", dice.Length(0.01, 2)),
            .. Maybe(dice, 0.2, "--spacing", dice.Length(0.1, 100)),
            .. Maybe(dice, 0.2, "--edge-margin", dice.Length(0.1, 50)),
            .. Maybe(dice, 0.5, "--board",
                $"{RandomSource.Text(dice.Size(20, 5000))}x{RandomSource.Text(dice.Size(20, 5000))}mm"),
            .. Maybe(dice, 0.2, "--dxf", dice.One("r12", "r2000")),
            .. Maybe(dice, 0.2, "--svg"), .. Maybe(dice, 0.2, "--model"), .. Maybe(dice, 0.2, "--drill", "ngc"),
            .. Maybe(dice, 0.2, "--tolerance", dice.Length(0.0005, 1)),
        ];
        if (withBase)
        {
            all.AddRange(["--base", dice.Length(2.5, 40), .. Maybe(dice, 0.3, "--base-margin", dice.Length(0.1, 500))]);
            all.AddRange([
                .. Maybe(dice, withVents ? 1 : 0, "--vents", dice.One("walls", "walls", "grid", "given")),
                .. Maybe(dice, 0.4, "--vent-spacing", dice.Length(Math.Clamp(size / 30, 5, 400), 500)),
                .. Maybe(dice, 0.3, "--vent-diameter", dice.Length(0.2, 10)),
                .. Maybe(dice, 0.3, "--bore", dice.Length(1, 30)),
                .. Maybe(dice, 0.3, "--plenum", dice.One("channels", size < 100 ? "feet" : "channels")),
            ]);
        }

        all.AddRange([
            .. Maybe(dice, withVents || command == "jig" || withPart ? 1 : 0.5, "--gauge", dice.Length(0.1, 25)),
            .. Maybe(dice, 0.3, "--plastic", dice.One("petg", "hips", "abs", "pc")),
            .. Maybe(dice, 0.3, "--min-wall", dice.Length(0.02, 25)),
            .. Maybe(dice, withPart ? 1 : 0, "--part", dice.One("inside", "outside")),
            .. Maybe(dice, withPart ? 0.5 : 0, "--part-at", dice.One("mouth", "face")),
            .. Maybe(dice, 0.3, "--frame",
                $"{RandomSource.Text(dice.Size(50, 5000))}x{RandomSource.Text(dice.Size(50, 5000))}mm"),
            .. Maybe(dice, 0.3, "--travel", dice.Length(1, 2000)),
            .. Maybe(dice, 0.2, "--sheet-size",
                $"{RandomSource.Text(dice.Size(50, 5000))}x{RandomSource.Text(dice.Size(50, 5000))}mm"),
        ]);
        if (command == "form")
            all.AddRange([.. Maybe(dice, 0.3, "--stepped"), .. Maybe(dice, 0.3, "--corner-ball", dice.Length(0.5, 50))]);
        if (command == "jig")
            all.AddRange([
                .. Maybe(dice, 0.5, "--trim-height", RandomSource.Text(Math.Clamp(depth * dice.Between(0.1, 0.99), 2, 500))
                    + "mm"), .. Maybe(dice, 0.3, "--clearance", dice.Length(0.01, 5)),
                .. Maybe(dice, 0.3, "--land", dice.Length(10, 300)),
                .. dice.Chance(0.4)
                    ? ["--flange", dice.Length(2, 200), .. Maybe(dice, 0.4, "--bit", dice.Length(1, 20)),
                        .. Maybe(dice, 0.4, "--bushing", dice.Length(8, 100))] : Array.Empty<string>(),
                .. dice.Chance(0.4)
                    ? ["--panel", .. Maybe(dice, 0.4, "--fit", dice.Length(0.01, 5)),
                        .. Maybe(dice, 0.4, "--panel-margin", dice.Length(1, 1000))] : Array.Empty<string>(),
            ]);
        if (command is "buck" or "jig" or "vents" && dice.Chance(0.5)) all.Add("--force");
        return [.. all];
    }

    private static string[] Maybe(RandomSource dice, double share, params string[] words) => dice.Chance(share) ? words : [];
}
