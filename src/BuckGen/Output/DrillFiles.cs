using System.Globalization;
using BuckGen.Bucks;
using BuckGen.Designs;
using BuckGen.Drilling;
using BuckGen.Pictures;
using BuckGen.Quantities;

namespace BuckGen.Output;

/// <summary>The drill map of a design: a list, a drawing, a paper template and, on request, a program for each layer and bit.</summary>
internal static class DrillFiles
{
    /// <summary>A bore is drilled from below into the surface layer when at least this much of it is left to take away, mm.</summary>
    private const double WorthBoring = 1;

    /// <summary>The files; none for a design without vents.</summary>
    public static IEnumerable<OutputFile> Of(BuckDesign design, OutputOptions options)
    {
        var fromAbove = FromAbove(design).ToArray();
        if (fromAbove.Length == 0) yield break;
        yield return new("drill/vents.csv", DrillCsv.Write([.. fromAbove, .. FromBelow(design)]));
        yield return new("drill/vents.dxf", DrillDxf.Write(fromAbove, options.DxfVersion));
        if (DrillTemplate.Of(design, options.Title) is { } template) yield return new("drill/template.svg", SvgPicture.Write(template));
        if (options.Drilling is not { } spec) yield break;
        foreach (var run in DrillRun.Split(fromAbove))
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"drill/layer-{run.Layer:00}-{run.Diameter:0.###}mm.ngc"), DrillProgram.Write(run, spec));
    }

    /// <summary>Everything drilled from the top face of its layer, right through.</summary>
    private static IEnumerable<DrillHole> FromAbove(BuckDesign design) =>
        from layer in design.Layers
        from part in layer.Parts
        from vent in part.Vents
        let reason = vent.IsBore ? "relief bore" : Words.Of(design.Vents!.Vents.First(v => v.Centre == vent.Centre).Reason)
        select new DrillHole(vent.Centre, vent.Diameter, layer.Thickness, layer.Number, reason);

    /// <summary>Relief bores into a thick surface layer that has no plate of its own for them under it.</summary>
    private static IEnumerable<DrillHole> FromBelow(BuckDesign design)
    {
        if (design.Vents is not { } vents || design.Spec.Base?.Under is not null) yield break;
        var surface = design.Layers.Last(l => l.Role == LayerRole.Base);
        var depth = surface.Thickness - vents.Spec.FaceThickness;
        if (depth < WorthBoring) yield break;
        foreach (var vent in vents.Vents)
            yield return new(vent.Centre, vents.Spec.BoreDiameter, depth, surface.Number, "relief bore from below");
    }
}
