namespace BuckGen.Bucks;

/// <summary>A sheet material the shop has.</summary>
/// <param name="Name">What the shop calls it: "MDF 12".</param>
/// <param name="Thickness">Measured thickness, mm, 0.2 to 100; not the nominal one.</param>
/// <param name="SheetWidth">Width of a whole sheet, mm.</param>
/// <param name="SheetHeight">Height of a whole sheet, mm.</param>
public sealed record Stock(string Name, double Thickness, double SheetWidth = Stock.UsualWidth, double SheetHeight = Stock.UsualHeight)
{
    /// <summary>Width assumed where nobody says how large the sheets are, mm: a common laser bed (common practice, no source).</summary>
    public const double UsualWidth = 600;

    /// <summary>Height assumed where nobody says how large the sheets are, mm.</summary>
    public const double UsualHeight = 400;

    /// <summary>True when the size of the sheet was not stated; a part that does not fit is then no error.</summary>
    public bool SizeIsAssumed { get; init; }

    /// <summary>The words of its name that say what it is made of; none for a bare thickness.</summary>
    internal IEnumerable<string> MaterialWords => Name.Split([' ', '-', '_', '/', ',', '.', '(', ')', '+'], StringSplitOptions.RemoveEmptyEntries)
        .Where(w => !w.All(char.IsAsciiDigit) && w is not ("mm" or "in"));

    internal void Validate()
    {
        if (!(Thickness is >= 0.2 and <= 100))
            throw new SpecException(FormattableString.Invariant(
                $"The stock \"{Name}\" is {Thickness} mm thick; it must be from 0.2 to 100 mm."));
        if (!(SheetWidth is >= 10 and <= 10000) || !(SheetHeight is >= 10 and <= 10000))
            throw new SpecException(FormattableString.Invariant(
                $"A sheet of \"{Name}\" is {SheetWidth} x {SheetHeight} mm; both sides must be from 10 to 10000 mm."));
    }
}
