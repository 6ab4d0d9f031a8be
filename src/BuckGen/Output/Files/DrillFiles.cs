using System.Globalization;
using BuckGen.Cutting.Drilling;
using BuckGen.Design;
using BuckGen.Output.Pictures.Svg;
using BuckGen.Output.Pictures.Templates;

namespace BuckGen.Output.Files;

/// <summary>The drill map of a design: a list, drawings and, on request, a program for each layer and bit.</summary>
internal static class DrillFiles
{
    /// <summary>The list and the drawings; none for a design without vents.</summary>
    public static IEnumerable<OutputFile> Lists(BuckDesign design, OutputOptions options)
    {
        var fromAbove = DrillMap.FromAbove(design).ToArray();
        if (fromAbove.Length == 0) yield break;
        yield return new("drill/vents.csv", DrillCsv.Write([.. fromAbove, .. DrillMap.FromBelow(design)]));
        yield return new("drill/vents.dxf", DrillDxf.Write(fromAbove, options.DxfVersion));
        if (DrillTemplate.Draw(design, options.Title) is { } template)
            yield return new("drill/template.svg", SvgPicture.Write(template));
    }

    /// <summary>The programs; none for a design without vents or without programs.</summary>
    public static IEnumerable<OutputFile> Programs(BuckDesign design, OutputOptions options)
    {
        if (options.Drilling is not { } spec) yield break;
        foreach (var run in DrillRun.Split([.. DrillMap.FromAbove(design)]))
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"drill/layer-{run.Layer:00}-{run.Diameter:0.###}mm.ngc"),
                DrillProgram.Write(run, spec));
    }
}
