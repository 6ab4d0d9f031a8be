using BuckGen.Design;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;

namespace BuckGen.Output.Files;

/// <summary>Solid models of a buck: as it is cut and as it is when the steps are gone; and the sheet formed over it.</summary>
internal static class ModelFiles
{
    /// <summary>The files; none for a design without wood.</summary>
    public static IEnumerable<OutputFile> Create(BuckDesign design, SolidMesh? smooth)
    {
        if (BuckModel.Stepped(design) is { IsEmpty: false } stepped)
            yield return new("model/buck-stepped.stl", StlFile.Write(stepped));
        if (design.Formed is { IsConverged: true } part) yield return new("model/part.glb", GlbFile.Write(part, "part"));
        if (smooth is not { IsEmpty: false }) yield break;
        yield return new("model/buck.stl", StlFile.Write(smooth));
        yield return new("model/buck.glb", GlbFile.Write(smooth, "buck"));
    }
}
