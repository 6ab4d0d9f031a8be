using System.Collections.Immutable;
using BuckGen.Cutting.CutPaths;

namespace BuckGen.Cutting.CutFiles;

/// <summary>Writes what is cut in one kind of file.</summary>
public interface ICutFileFormat
{
    /// <summary>Its name, such as "DXF".</summary>
    string Name { get; }

    /// <summary>The ending of its files: a dot, then one to eight small letters or digits, such as ".dxf".</summary>
    string Extension { get; }

    /// <summary>
    /// True for files that a machine runs: they are written for the boards alone, with the kerf allowed for; false for layers and
    /// jigs too.
    /// </summary>
    bool BoardsOnly => false;

    /// <summary>The bytes of the file.</summary>
    /// <param name="drawing">The drawing, in mm; its paths stand in the order in which they are cut.</param>
    ImmutableArray<byte> Write(CutDrawing drawing);
}
