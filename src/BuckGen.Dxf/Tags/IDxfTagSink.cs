namespace BuckGen.Dxf.Tags;

/// <summary>Takes a drawing tag by tag. What a writer says is separate from how it is stored.</summary>
public interface IDxfTagSink
{
    /// <summary>Takes a text value.</summary>
    /// <param name="code">Group code.</param>
    /// <param name="value">One line of printable ASCII.</param>
    /// <exception cref="DxfException">The text holds a line break or a character outside printable ASCII.</exception>
    void Write(int code, string value);

    /// <summary>Takes a whole number.</summary>
    /// <param name="code">Group code.</param>
    /// <param name="value">Any whole number.</param>
    void Write(int code, int value);

    /// <summary>Takes a real number.</summary>
    /// <param name="code">Group code.</param>
    /// <param name="value">A finite number; it is stored with at most six decimals.</param>
    /// <exception cref="DxfException">The number is not finite.</exception>
    void Write(int code, double value);
}
