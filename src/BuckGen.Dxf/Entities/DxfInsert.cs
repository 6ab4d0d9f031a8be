namespace BuckGen.Dxf.Entities;

/// <summary>A block placed in the drawing, once or as a grid.</summary>
/// <param name="Block">Name of the block.</param>
/// <param name="InsertionPoint">Where the block's base point comes to lie, in drawing units.</param>
public sealed record DxfInsert(string Block, DxfPoint InsertionPoint) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type => "INSERT";

    /// <summary>Factors along the block's x, y and z axes; negative ones mirror. A z of 0 in a file means 1.</summary>
    public DxfPoint Scale { get; init; } = new(1, 1, 1);

    /// <summary>Degrees, counter-clockwise, applied after the scale.</summary>
    public double Rotation { get; init; }

    /// <summary>Copies along the turned x axis, 1 or more.</summary>
    public int Columns { get; init; } = 1;

    /// <summary>Copies along the turned y axis, 1 or more.</summary>
    public int Rows { get; init; } = 1;

    /// <summary>Distance between columns, in drawing units, not scaled.</summary>
    public double ColumnSpacing { get; init; }

    /// <summary>Distance between rows, in drawing units, not scaled.</summary>
    public double RowSpacing { get; init; }
}
