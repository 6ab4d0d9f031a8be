namespace BuckGen.Dxf.Entities;

/// <summary>An entity of a type that is not read. It is kept so that it can be counted by type and layer.</summary>
/// <param name="Type">The type name in the file.</param>
public sealed record DxfOther(string Type) : DxfEntity
{
    /// <inheritdoc/>
    public override string Type { get; } = Type;
}
