using System.Collections.Immutable;
using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf;

/// <summary>A whole drawing, as plain data. Coordinates are in drawing units and are never changed by the reader.</summary>
public sealed record DxfDrawing
{
    /// <summary>The <c>$ACADVER</c> of the header, such as <c>AC1015</c>; null when the file names none.</summary>
    public string? Version { get; init; }

    /// <summary>The <c>$INSUNITS</c> of the header (see <see cref="DxfUnits"/>); null when the file names none.</summary>
    public int? InsertionUnits { get; init; }

    /// <summary>The <c>$MEASUREMENT</c> of the header: 0 inches, 1 metric; null when the file names none.</summary>
    public int? Measurement { get; init; }

    /// <summary>The layer table. Entities may name layers that are not in it.</summary>
    public ImmutableArray<DxfLayer> Layers { get; init; } = [];

    /// <summary>The block definitions.</summary>
    public ImmutableArray<DxfBlock> Blocks { get; init; } = [];

    /// <summary>The content of the ENTITIES section in file order, hidden and paper-space entities included.</summary>
    public ImmutableArray<DxfEntity> Entities { get; init; } = [];

    /// <summary>What the reader tolerated; empty for a clean file and for a drawing made in code.</summary>
    public ImmutableArray<DxfNote> Notes { get; init; } = [];

    /// <summary>Finds a layer by name without regard to case.</summary>
    /// <param name="name">Layer name.</param>
    /// <returns>The layer, or null when the table does not hold it.</returns>
    public DxfLayer? FindLayer(string name) =>
        Layers.FirstOrDefault(layer => string.Equals(layer.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Finds a block by name without regard to case.</summary>
    /// <param name="name">Block name.</param>
    /// <returns>The block, or null when the file does not define it.</returns>
    public DxfBlock? FindBlock(string name) =>
        Blocks.FirstOrDefault(block => string.Equals(block.Name, name, StringComparison.OrdinalIgnoreCase));
}
