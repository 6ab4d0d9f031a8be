using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;

namespace BuckGen.Output.Pictures.Png;

/// <summary>
/// Pixels as a PNG file. Compressors differ between machines, so this one is our own and simple: each row as its difference from
/// the one above, and repeats of the pixel before as one word. Drawings are mostly that.
/// </summary>
/// <remarks>
/// Sources: PNG (W3C, third edition) sections 5, 9.2 and 10; RFC 1950 and RFC 1951 section 3.2.6 (all from memory; tests read the
/// files with other readers).
/// </remarks>
internal static class PngFile
{
    private const int Channels = 3, MaxRepeat = 258, MinRepeat = 3;

    /// <summary>First length of each code from 257 on, and how many bits say how much longer.</summary>
    private static readonly ImmutableArray<int> Lengths =
        [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];

    private static readonly ImmutableArray<uint> CrcTable =
        [.. Enumerable.Range(0, 256)
            .Select(n => Enumerable.Range(0, 8).Aggregate((uint)n, (c, _) => (c & 1) != 0 ? 0xedb88320 ^ (c >> 1) : c >> 1))];

    /// <summary>The file.</summary>
    public static ImmutableArray<byte> Write(Raster raster)
    {
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, raster.Width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), raster.Height);
        // Eight bits a channel, red, green and blue.
        (head[8], head[9]) = (8, 2);
        return [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", head), .. Chunk("IDAT", Packed(Rows(raster))),
            .. Chunk("IEND", [])];
    }

    private static byte[] Chunk(string name, byte[] data)
    {
        var chunk = new byte[data.Length + 12];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        Encoding.ASCII.GetBytes(name, chunk.AsSpan(4));
        data.CopyTo(chunk, 8);
        var crc = uint.MaxValue;
        foreach (var b in chunk.AsSpan(4, data.Length + 4)) crc = CrcTable[(byte)(crc ^ b)] ^ (crc >> 8);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(data.Length + 8), ~crc);
        return chunk;
    }

    /// <summary>Each row behind the word "up": less the row above.</summary>
    [MethodImpl(Raster.AtOnce)]
    private static byte[] Rows(Raster raster)
    {
        var (stride, pixels) = (raster.Width * Channels, raster.Pixels);
        var rows = new byte[(stride + 1) * raster.Height];
        for (var y = 0; y < raster.Height; y++)
        {
            var place = y * (stride + 1);
            rows[place] = 2;
            var row = pixels.AsSpan(y * stride, stride);
            var above = pixels.AsSpan(Math.Max(0, y - 1) * stride, stride);
            // Most rows of a drawing are the one above: their differences are zero.
            if (y > 0 && row.SequenceEqual(above)) continue;
            var differences = rows.AsSpan(place + 1, stride);
            for (var x = 0; x < stride; x++) differences[x] = (byte)(row[x] - (y == 0 ? 0 : above[x]));
        }

        return rows;
    }

    /// <summary>One block with the fixed codes; the only way back is one pixel.</summary>
    [MethodImpl(Raster.AtOnce)]
    private static byte[] Packed(byte[] data)
    {
        var bits = new BitWriter();
        // Window of 32 kB, no dictionary; then: the last block, fixed codes.
        bits.Plain(0x0178, 16);
        bits.Plain(0b011, 3);
        for (var i = 0; i < data.Length;)
        {
            var ahead = data.AsSpan(i, Math.Min(MaxRepeat, data.Length - i));
            var repeat = i < Channels ? 0 : ahead.CommonPrefixLength(data.AsSpan(i - Channels, ahead.Length));
            if (repeat < MinRepeat) bits.Code(data[i++]);
            else
            {
                bits.Repeat(repeat);
                i += repeat;
            }
        }

        bits.Code(256);
        return bits.Done(data);
    }

    private sealed class BitWriter
    {
        private readonly List<byte> bytes = new(1 << 16);
        private ulong held;
        private int count;

        /// <summary>A number, its lowest bit first.</summary>
        public void Plain(int value, int length)
        {
            held |= (ulong)value << count;
            for (count += length; count >= 8; count -= 8, held >>= 8) bytes.Add((byte)held);
        }

        /// <summary>A code of the fixed table, its highest bit first.</summary>
        public void Code(int symbol)
        {
            var (code, length) = symbol switch
            {
                < 144 => (0x30 + symbol, 8),
                < 256 => (0x190 + symbol - 144, 9),
                < 280 => (symbol - 256, 7),
                _ => (0xc0 + symbol - 280, 8),
            };
            Plain(Turned(code, length), length);
        }

        private static int Turned(int code, int length)
        {
            var turned = 0;
            for (; length > 0; length--, code >>= 1) turned = (turned << 1) | (code & 1);
            return turned;
        }

        /// <summary>Repeats the bytes three back, up to the given length.</summary>
        public void Repeat(int length)
        {
            var code = Lengths.Length - 1;
            while (Lengths[code] > length) code--;
            Code(257 + code);
            // Four codes each have one bit more than the four before; the first eight and the last have none.
            if (code is >= 8 and < 28) Plain(length - Lengths[code], code / 4 - 1);
            // Distance code 2 in five bits, the highest first: three.
            Plain(0b01000, 5);
        }

        /// <summary>What was written, filled up to whole bytes, and the sum of the data behind it.</summary>
        [MethodImpl(Raster.AtOnce)]
        public byte[] Done(byte[] data)
        {
            if (count > 0) bytes.Add((byte)held);
            var (a, b) = (1u, 0u);
            // This number of bytes at once keeps the sums below 32 bits.
            for (var start = 0; start < data.Length; start += 5552)
            {
                foreach (var d in data.AsSpan(start, Math.Min(5552, data.Length - start))) (a, b) = (a + d, b + a + d);
                (a, b) = (a % 65521, b % 65521);
            }

            Span<byte> sum = stackalloc byte[4];
            BinaryPrimitives.WriteUInt32BigEndian(sum, (b << 16) | a);
            return [.. bytes, .. sum];
        }
    }
}
