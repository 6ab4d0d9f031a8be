using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;
using CsCheck;

namespace BuckGen.Dxf.Tests.Corpus;

public class MutationTests
{
    private const int MaxSeed = 30_000;

    private static readonly byte[][] Seeds =
        [.. CorpusFiles.Manifest().Select(file => CorpusFiles.Bytes(file.File))
            .Where(bytes => bytes.Length is > 0 and < MaxSeed)];

    private static readonly Gen<(int Seed, (double Place, byte Value)[] Changes, double Cut)> Damage = Gen.Select(
        Gen.Int[0, Seeds.Length - 1],
        Gen.Select(Gen.Double[0, 1], Gen.Byte).Array[0, 6],
        Gen.Frequency((3, Gen.Const(1.0)), (1, Gen.Double[0, 1])));

    [Fact]
    public void Damaged_bytes_give_a_drawing_or_a_DxfException_and_nothing_else() =>
        Damage.Sample(
            damage =>
            {
                var bytes = Damaged(damage.Seed, damage.Changes, damage.Cut);
                try
                {
                    Assert.NotNull(DxfReader.Read(bytes));
                }
                catch (DxfException exception)
                {
                    Assert.NotEmpty(exception.Message);
                    Assert.NotEmpty(exception.Faults);
                }
            },
            iter: 1500);

    [Fact]
    public void Swapped_lines_give_a_drawing_or_a_DxfException_and_nothing_else() =>
        Gen.Select(Gen.Int[0, Seeds.Length - 1], Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
            (seed, first, second) =>
            {
                var lines = System.Text.Encoding.Latin1.GetString(Seeds[seed]).Split('\n');
                var (a, b) = ((int)(first * (lines.Length - 1)), (int)(second * (lines.Length - 1)));
                (lines[a], lines[b]) = (lines[b], lines[a]);
                try
                {
                    Assert.NotNull(DxfReader.Read(System.Text.Encoding.Latin1.GetBytes(string.Join('\n', lines))));
                }
                catch (DxfException exception)
                {
                    Assert.NotEmpty(exception.Message);
                }
            },
            iter: 1000);

    private static byte[] Damaged(int seed, (double Place, byte Value)[] changes, double cut)
    {
        var bytes = Seeds[seed].ToArray();
        foreach (var (place, value) in changes)
            bytes[(int)(place * (bytes.Length - 1))] = value;
        return bytes[..(int)(cut * bytes.Length)];
    }
}
