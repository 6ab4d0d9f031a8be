namespace BuckGen.References.Tests.Browser;

/// <summary>The window that shows a page, CSS pixels.</summary>
public enum Window
{
    Desktop,
    Phone,
}

/// <summary>The reports that are checked, each in each window.</summary>
internal static class Looks
{
    public static readonly string[] Examples = ["boathouse-sign", "specimen-box"];

    public static TheoryData<string, Window> All { get; } =
        new(Examples.SelectMany(e => Enum.GetValues<Window>().Select(w => (e, w))));

    public static (int Width, int Height) Size(Window window) => window == Window.Phone ? (390, 844) : (1280, 900);
}
