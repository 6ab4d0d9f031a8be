using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace BuckGen.Tests.Output.Pictures;

/// <summary>A PNG file read back: eight bits a channel, colour with or without a share of transparency, not interlaced.</summary>
internal sealed record PngImage(int Width, int Height, int Channels, byte[] Pixels)
{
    /// <summary>Colour of a pixel, counted from the upper left.</summary>
    public (byte Red, byte Green, byte Blue) this[int x, int y] => (At(x, y, 0), At(x, y, 1), At(x, y, 2));

    /// <summary>How much another picture, at least as large, differs on average over all pixels and colours, of 255.</summary>
    public double DifferenceTo(PngImage other) => Enumerable.Range(0, Width * Height).Average(i =>
        Enumerable.Range(0, 3).Average(c => Math.Abs(At(i % Width, i / Width, c) - other.At(i % Width, i / Width, c))));

    /// <summary>Share of pixels that are not white.</summary>
    public double Inked =>
        Enumerable.Range(0, Width * Height).Count(i => this[i % Width, i / Width] != (255, 255, 255)) / (double)(Width * Height);

    private byte At(int x, int y, int channel) => Pixels[(y * Width + x) * Channels + channel];

    public static PngImage Read(ReadOnlySpan<byte> file)
    {
        Xunit.Assert.Equal("\u0089PNG\r\n\u001a\n", Encoding.Latin1.GetString(file[..8]));
        var (head, packed) = (Array.Empty<byte>(), new MemoryStream());
        for (var place = 8; place < file.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(file[place..]);
            var (name, data) = (Encoding.ASCII.GetString(file.Slice(place + 4, 4)), file.Slice(place + 8, length).ToArray());
            Xunit.Assert.Equal(BinaryPrimitives.ReadUInt32BigEndian(file[(place + 8 + length)..]),
                Crc(file.Slice(place + 4, length + 4)));
            if (name == "IHDR") head = data;
            if (name == "IDAT") packed.Write(data);
            place += length + 12;
        }

        packed.Position = 0;
        using var unpacked = new MemoryStream();
        using (var stream = new ZLibStream(packed, CompressionMode.Decompress)) stream.CopyTo(unpacked);
        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(head), BinaryPrimitives.ReadInt32BigEndian(head.AsSpan(4)));
        Xunit.Assert.Equal((8, 0), (head[8], head[12]));
        var channels = head[9] == 6 ? 4 : 3;
        return new(width, height, channels, Unfiltered(unpacked.ToArray(), width * channels, height, channels));
    }

    private static byte[] Unfiltered(byte[] rows, int stride, int height, int channels)
    {
        Xunit.Assert.Equal((stride + 1) * height, rows.Length);
        var pixels = new byte[stride * height];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < stride; x++)
            {
                var (a, b) = (x < channels ? 0 : pixels[y * stride + x - channels], y == 0 ? 0 : pixels[(y - 1) * stride + x]);
                var c = x < channels || y == 0 ? 0 : pixels[(y - 1) * stride + x - channels];
                var guess = rows[y * (stride + 1)] switch { 0 => 0, 1 => a, 2 => b, 3 => (a + b) / 2, _ => Paeth(a, b, c) };
                pixels[y * stride + x] = (byte)(rows[y * (stride + 1) + 1 + x] + guess);
            }

        return pixels;
    }

    private static int Paeth(int a, int b, int c)
    {
        var (toA, toB, toC) = (Math.Abs(b - c), Math.Abs(a - c), Math.Abs(a + b - 2 * c));
        return toA <= toB && toA <= toC ? a : toB <= toC ? b : c;
    }

    private static uint Crc(ReadOnlySpan<byte> data)
    {
        var crc = uint.MaxValue;
        foreach (var b in data)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++) crc = (crc & 1) != 0 ? 0xedb88320 ^ (crc >> 1) : crc >> 1;
        }

        return ~crc;
    }
}
