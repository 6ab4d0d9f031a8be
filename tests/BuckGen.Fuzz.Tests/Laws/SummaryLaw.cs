using System.Text.Json;
using BuckGen.Design.Bucks;
using BuckGen.Fuzz.Tests.Judging;
using BuckGen.Fuzz.Tests.Runs;

namespace BuckGen.Fuzz.Tests.Laws;

/// <summary>
/// The summary describes the files: as many layers, holes, vents, dowels and boards, with the areas and lengths that are in
/// them.
/// </summary>
internal sealed class SummaryLaw : ILaw
{
    private const double Rounded = 1e-4;

    public IEnumerable<string> Broken(DesignRun run)
    {
        using var document = JsonDocument.Parse(run.Files.Summary.AsMemory());
        var summary = document.RootElement;
        var layers = run.Files.Layers.Where(l => l.Layer.Role is not (LayerRole.Jig or LayerRole.Panel)).ToArray();
        var told = summary.GetProperty("layers").EnumerateArray().ToArray();
        if (told.Length != layers.Length) yield return $"{told.Length} layers are told of, {layers.Length} written";
        var dowels = new HashSet<(double, double)>();
        foreach (var ((layer, dxf), entry) in layers.Zip(told))
        {
            var paths = DxfText.Read(dxf);
            var cut = new Shape(paths.Where(p => p.IsCutThrough).Select(p => p.Corners));
            var slack = Slack.Flat * (cut.Perimeter + 1);
            if (DxfPath.AreaLeft(paths) is var area && Math.Abs(Number(entry, "area") - area) > slack)
                yield return FormattableString.Invariant(
                    $"layer {layer.Number} is told to have {Number(entry, "area")} mm², its file has {area}");
            if (Number(entry, "islands") != paths.Count(p => p.Layer == "CUT_OUTER")
                || Number(entry, "holes") != paths.Count(p => p.Layer == "CUT_INNER"))
                yield return $"layer {layer.Number} is told to have other islands or holes than its file";
            var length = cut.Perimeter + paths.Where(p => p.Layer == "DOWEL").Sum(p => 2 * Math.PI * p.Radius);
            if (Math.Abs(Number(entry, "cutLength") - length) > Slack.Written * (cut.Edges.Length + 10))
                yield return FormattableString.Invariant(
                    $"layer {layer.Number} is told to be cut along {Number(entry, "cutLength")} mm, its file along {length}");
            foreach (var dowel in paths.Where(p => p.Layer == "DOWEL"))
                dowels.Add((Math.Round(dowel.Centre.X, 2), Math.Round(dowel.Centre.Y, 2)));
        }

        if (summary.GetProperty("dowels").GetArrayLength() < dowels.Count)
            yield return $"{summary.GetProperty("dowels").GetArrayLength()} dowels are told of, the files have {dowels.Count}";
        if (summary.GetProperty("vents").GetArrayLength() != (run.Design.Vents?.Vents.Length ?? 0))
            yield return "the vents told of are not those designed";
        var boards = summary.GetProperty("boards").EnumerateArray().Select(s => s.GetProperty("parts").GetArrayLength());
        if (!boards.SequenceEqual(run.Boards.Select(b => b.Parts.Count))) yield return "the boards told of are not those written";
        if (Number(summary, "cutLength") is var whole && Math.Abs(whole - run.Plan.CutLength) > Rounded)
            yield return FormattableString.Invariant($"{whole} mm of cuts are told of, {run.Plan.CutLength} planned");
        if (!run.Files.All.IsEmpty && !summary.GetProperty("files").EnumerateArray().Select(f => f.GetString()).Order()
            .SequenceEqual(run.Files.All.Select(f => f.Path).Order()))
            yield return "the files told of are not those made";
    }

    private static double Number(JsonElement entry, string name) => entry.GetProperty(name).GetDouble();
}
