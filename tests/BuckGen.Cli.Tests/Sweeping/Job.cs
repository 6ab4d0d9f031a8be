namespace BuckGen.Cli.Tests.Sweeping;

/// <summary>Random job files: every table, most values legal.</summary>
internal static class Job
{
    /// <summary>The text.</summary>
    /// <param name="dice">The choices.</param>
    /// <param name="size">Width of what is drawn, mm.</param>
    public static string CreateRandom(RandomSource dice, double size)
    {
        var thick = dice.Size(0.3, 60);
        // Few boards mostly, so that a run stays short.
        var boards = dice.Chance(0.1) ? 40 : 8;
        var depth = Math
            .Max(0.1, Math
                .Min(dice.Chance(0.6) ? size * dice.Between(0.02, 1.5) : dice.Size(0.1, 1000), Math.Min(1000, boards * thick)));
        List<string> lines = ["[outline]", "file = \"drawing.svg\""];
        var ordered = dice.Chance(0.3);
        lines.AddRange(["[" + (ordered ? "part" : "buck") + "]", $"depth = \"{RandomSource.Text(depth)}mm\""]);
        if (ordered)
        {
            Word(0.7, "drawn", "inside", "outside");
            Word(0.7, "at", "mouth", "face");
            Length(0.3, "cut-height", 0.1, 50);
            lines.Add("[buck]");
        }
        else
            Word(0.5, "outline-at", "face", "base");
        Put(0.5, "draft", () => RandomSource.Text(dice.One(0, -1, 1) * dice.Size(0.1, 45)));
        Word(0.5, "kind", "male", "female");
        Word(0.4, "corners", "round", "mitre");
        Word(0.5, "steps", "outside", "inside", "middle");
        Put(0.2, "depth-tolerance", () => RandomSource.Text(dice.Between(0, 50)));
        Put(0.2, "letter-height", () => RandomSource.Text(dice.Between(2, 50)));
        Length(0.3, "block-margin", 0.1, 500);
        lines.AddRange(["[[stock]]", "name = \"A\"", $"thickness = \"{RandomSource.Text(thick)}mm\""]);
        Sizes(0.6, "board", 20, 5000);
        Put(0.3, "price", () => RandomSource.Text(dice.Size(0.01, 1e6)));
        Put(0.3, "cut-feed", () => RandomSource.Text(dice.Size(1, 1e5)));
        var plate = Table(0.7, "base", "stock = \"A\"");
        if (plate)
        {
            Length(0.3, "margin", 0.1, 500);
            Word(0.3, "under", "A");
            if (Table(0.6, "vents"))
            {
                Word(0.6, "pattern", "walls", "grid", "given");
                Length(0.3, "spacing", Math.Clamp(size / 30, 5, 400), 500);
                Length(0.3, "grid-pitch", Math.Clamp(size / 30, 5, 400), 500);
                Length(0.3, "wall-distance", 0.01, 20);
                Length(0.3, "diameter", 0.2, 10);
                Word(0.3, "drills", "metric", "number");
                Length(0.3, "min-drill", 0.2, 10);
                Length(0.3, "bore", 1, 30);
                Length(0.3, "face-thickness", 0.5, 20);
                Length(0.3, "land", 0.5, 20);
                Put(0.3, "points",
                    () =>
                        $"[[{RandomSource.Text(dice.Between(-1, 1) * size)}, {RandomSource.Text(dice.Between(-1, 1) * size)}]]");
            }

            if (Table(0.4, "plenum", "stock = \"A\""))
            {
                Word(0.5, "kind", "channels", size < 100 ? "feet" : "channels");
                Length(0.3, "width", 3, 100);
                Length(0.3, "port-diameter", 3, 200);
                Length(0.3, "max-bow", 0.01, 5);
            }

            if (Table(0.3, "vacuum"))
            {
                Put(0.5, "vacuum", () => $"\"{RandomSource.Text(dice.Between(0.5, 100))}kPa\"");
                Put(0.5, "pump-litres-per-second", () => RandomSource.Text(dice.Size(1e-3, 1e4)));
                Put(0.5, "tank-litres", () => RandomSource.Text(dice.Size(1e-3, 1e5)));
                Put(0.5, "seconds", () => RandomSource.Text(dice.Size(0.01, 60)));
            }
        }

        if (Table(0.3, "drilling"))
        {
            Length(0.3, "safe-height", 1, 100);
            Length(0.3, "peck", 0.1, 20);
        }

        if (Table(0.9, "sheet"))
        {
            Word(0.4, "plastic", "petg", "hips", "abs", "pc");
            Length(0.6, "gauge", 0.1, 25);
            Length(0.3, "min-wall", 0.02, 25);
            Put(0.3, "price", () => RandomSource.Text(dice.Size(0.01, 1e5)));
            Put(0.3, "sizes", () => $"[[{RandomSource.Text(dice.Size(50, 5000))}, {RandomSource.Text(dice.Size(50, 5000))}]]");
        }

        if (Table(0.5, "former"))
        {
            Sizes(0.4, "frame", 50, 5000);
            Sizes(0.3, "platen", 50, 5000);
            Length(0.3, "base-gap", 0, 100);
            Length(0.3, "travel", 1, 2000);
            Length(0.3, "gap", 0.5, 500);
            Length(0.3, "plug-gap", 0.5, 200);
            Put(0.3, "heater", () => RandomSource.Text(dice.Between(100, 800)));
            Length(0.3, "grip", 1, 50);
            Length(0.3, "lip", 1, 50);
        }

        if (Table(0.4, "forming"))
        {
            Put(0.4, "stepped", () => "true");
            Length(0.3, "corner-ball", 0.5, 50);
            Put(0.3, "modulus", () => RandomSource.Text(dice.Size(0.001, 10)));
            Put(0.3, "friction", () => RandomSource.Text(dice.Between(0, 1)));
            Put(0.3, "stiffening", () => RandomSource.Text(dice.Between(0, 2)));
        }

        if (Table(0.5, "jig"))
        {
            Length(0.4, "trim-height", Math.Clamp(depth / 10, 2, 400), Math.Clamp(depth, 3, 500));
            Length(0.3, "clearance", 0.01, 5);
            Length(0.3, "land", 10, 300);
            Put(0.3, "core", () => "false");
            Length(0.3, "blade-room", 0.1, 20);
        }

        if (Table(0.3, "flange", "stock = \"A\""))
        {
            Length(0.4, "width", 2, 200);
            Word(0.3, "rim", "offset", "rectangle");
            Length(0.3, "margin", 1, 200);
            Length(0.3, "corner-radius", 0, 50);
            Length(0.3, "bit", 1, 10);
            Length(0.3, "bushing", 10, 100);
        }

        if (Table(0.3, "panel", "stock = \"A\""))
        {
            Length(0.3, "fit", 0.01, 5);
            Length(0.3, "plane", 0.1, 100);
            Word(0.3, "edge", "rectangle", "offset");
            Length(0.3, "margin", 1, 200);
            Length(0.3, "corner-radius", 0.5, 50);
            Length(0.3, "bit", 0.5, 20);
        }

        if (Table(0.4, "cutting"))
        {
            Word(0.4, "machine", "laser", "router");
            Length(0.4, "kerf", 0.01, 2);
            Length(0.3, "spacing", 0.1, 100);
            Length(0.3, "edge-margin", 0.1, 50);
            Sizes(0.4, "bed", 50, 3000);
        }

        if (Table(0.3, "rates"))
        {
            foreach (var key in
                (string[])["labour", "machine", "mark-feed", "path-seconds", "board-minutes", "drill-seconds", "glue-minutes"])
                Put(0.5, key, () => RandomSource.Text(dice.Chance(0.1) ? 0 : dice.Size(0.001, 1e6)));
        }

        if (Table(0.3, "checks"))
            foreach (var key in
                (string[])["web-gap", "max-depth-male", "max-depth-female", "max-draw", "max-thinning", "min-corner", "max-step",
                    "min-frame-gap"])
                Put(0.3, key, () => RandomSource.Text(dice.Size(1, 10)));
        if (Table(0.3, "dowels"))
        {
            Length(0.5, "diameter", 1, 50);
            Length(0.5, "fit", 0.01, 2);
            Length(0.5, "wall", 0.5, 100);
        }

        if (Table(0.3, "output"))
        {
            Word(0.5, "dxf", "r12", "r2000");
            Word(0.5, "paper", "a4", "letter");
            Put(0.5, "svg", () => "true");
            Put(0.5, "model", () => "true");
        }

        return string.Join('\n', lines) + "\n";

        bool Table(double share, string name, params string[] first)
        {
            if (!dice.Chance(share)) return false;
            lines.Add($"[{name}]");
            lines.AddRange(first);
            return true;
        }

        void Put(double share, string key, Func<string> value)
        {
            if (dice.Chance(share)) lines.Add($"{key} = {value()}");
        }

        void Word(double share, string key, params string[] words) => Put(share, key, () => $"\"{dice.One(words)}\"");
        void Length(double share, string key, double from, double to) => Put(share, key, () => $"\"{dice.Length(from, to)}\"");
        void Sizes(double share, string key, double from, double to) =>
            Put(share, key, () => $"[{RandomSource.Text(dice.Size(from, to))}, {RandomSource.Text(dice.Size(from, to))}]");
    }
}
