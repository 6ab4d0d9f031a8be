using System.Buffers.Binary;
using System.Globalization;
using BuckGen.Dxf.Reading.Groups;
using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading;

/// <summary>
/// Reads the tags of a binary DXF. Values become text so that one reader serves both forms; a double survives that unchanged.
/// Line numbers are those the tags would have in the text form.
/// </summary>
internal static class BinaryTagSource
{
    public static ReadOnlySpan<byte> Sentinel => "AutoCAD Binary DXF\r\n\u001a\0"u8;

    public static IEnumerable<DxfTag> Read(byte[] bytes, ValueDecoder decoder)
    {
        var position = Sentinel.Length;
        // The first tag is "0 SECTION": one zero byte before the S means one-byte codes, two mean two-byte codes.
        var wideCodes = bytes.Length > position + 1 && bytes[position + 1] == 0;
        string? type = null;
        for (var line = 1; position < bytes.Length; line += 2)
        {
            var place = new Place(bytes, position, line, type);
            var code = Code(ref place, wideCodes);
            var tag = new DxfTag(code, Value(ref place, code, decoder), line);
            position = place.Position;
            if (code == 999)
                continue;
            if (code == 0)
                type = tag.Value;
            decoder.Watch(tag);
            yield return tag;
            if (tag is { Code: 0, Value: "EOF" })
                yield break;
        }
    }

    private static int Code(ref Place place, bool wideCodes)
    {
        if (wideCodes)
            return BinaryPrimitives.ReadInt16LittleEndian(place.Take(2));
        var code = place.Take(1)[0];
        return code == byte.MaxValue ? BinaryPrimitives.ReadInt16LittleEndian(place.Take(2)) : code;
    }

    private static string Value(ref Place place, int code, ValueDecoder decoder) => code switch
    {
        310 or 1004 => Skipped(ref place),
        (>= 10 and <= 59) or (>= 110 and <= 149) or (>= 210 and <= 239) or (>= 460 and <= 469) or (>= 1010 and <= 1059) =>
            BinaryPrimitives.ReadDoubleLittleEndian(place.Take(8)).ToString("R", CultureInfo.InvariantCulture),
        (>= 60 and <= 79) or (>= 170 and <= 179) or (>= 270 and <= 289) or (>= 370 and <= 389) or (>= 400 and <= 409)
            or (>= 1060 and <= 1070) => Text(BinaryPrimitives.ReadInt16LittleEndian(place.Take(2))),
        (>= 90 and <= 99) or (>= 420 and <= 429) or (>= 440 and <= 459) or 1071 =>
            Text(BinaryPrimitives.ReadInt32LittleEndian(place.Take(4))),
        >= 160 and <= 169 => Text(BinaryPrimitives.ReadInt64LittleEndian(place.Take(8))),
        >= 290 and <= 299 => Text(place.Take(1)[0]),
        (>= -5 and <= 9) or (>= 100 and <= 109) or (>= 300 and <= 369) or (>= 390 and <= 399) or (>= 410 and <= 419)
            or (>= 430 and <= 439) or (>= 470 and <= 481) or (>= 999 and <= 1009) =>
            // A line end can't be part of a value in the text form, and messages are one line.
            decoder.Decode(place.TakeText(), place.Line).Trim().ReplaceLineEndings(" "),
        _ => throw place.Fault($"the binary file holds group code {code}, which does not exist; it is damaged, export it again"),
    };

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    // Pictures and other programs' data: a length byte, then bytes that are not read here.
    private static string Skipped(ref Place place)
    {
        place.Take(place.Take(1)[0]);
        return "";
    }

    private struct Place(byte[] bytes, int position, int line, string? type)
    {
        public int Position { get; private set; } = position;

        public readonly int Line => line;

        public ReadOnlySpan<byte> Take(int count)
        {
            if (count > bytes.Length - Position)
                throw Fault("the binary file ends in the middle of a value; it is cut off, export it again");
            Position += count;
            return bytes.AsSpan(Position - count, count);
        }

        public ReadOnlySpan<byte> TakeText()
        {
            var length = bytes.AsSpan(Position).IndexOf((byte)0);
            if (length < 0)
                throw Fault("the binary file ends in the middle of a text; it is cut off, export it again");
            var text = Take(length);
            Position++;
            return text;
        }

        public readonly DxfException Fault(string message) => new(message, line, type is null ? null : Excerpt.Shorten(type));
    }
}
