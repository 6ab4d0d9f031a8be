using System.Text;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>Short ways to read and to be refused.</summary>
internal static class Reading
{
    public static Outline Dxf(params IEnumerable<string> entities) => OutlineReader.Read(DxfText.File(entities), "test.dxf");

    public static Outline Svg(string body, OutlineOptions? options = null) => OutlineReader.Read(Encoding.UTF8.GetBytes(
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">{body}</svg>"),
        "test.svg", options);

    public static string Refusal(byte[] content, OutlineOptions? options = null)
    {
        var message = Assert.Throws<OutlineException>(() => OutlineReader.Read(content, "test.dxf", options)).Message;
        Assert.StartsWith("test.dxf: ", message);
        Assert.DoesNotContain('\n', message);
        return message["test.dxf: ".Length..];
    }

    public static string Refusal(params IEnumerable<string> entities) => Refusal(DxfText.File(entities));
}
