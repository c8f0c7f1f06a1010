using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>However a file is spoilt, it opens or is refused with a sentence; nothing else comes out, and it is never left half mended.</summary>
public sealed class ADamagedFile : IDisposable
{
    private const int Flipped = 200;
    private const int Truncated = 50;

    private static readonly Lazy<byte[]> Sound = new(() =>
    {
        using var test = new TestShop();
        DemoShop.Fill(test.Shop);
        test.Shop.Dispose();
        return File.ReadAllBytes(test.Path);
    });

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Opens_or_is_refused_with_a_sentence_wherever_bytes_are_flipped()
    {
        var chance = new Random(20_260_503);
        var written = Enumerable.Range(0, Sound.Value.Length).Where(at => Sound.Value[at] != 0).ToArray();
        var outcomes = Enumerable.Range(0, Flipped).Select(_ =>
        {
            var bytes = (byte[])Sound.Value.Clone();
            foreach (var at in chance.GetItems(written, chance.Next(1, 6))) bytes[at] ^= (byte)(1 << chance.Next(8));
            return Look(bytes);
        }).ToList();

        // Else the bytes were not where they hurt.
        Assert.Contains(outcomes, refused => refused);
        Assert.Contains(outcomes, refused => !refused);
    }

    [Fact]
    public void Opens_or_is_refused_with_a_sentence_wherever_it_is_cut_off()
    {
        var chance = new Random(20_260_503);
        var outcomes = Enumerable.Range(0, Truncated).Select(_ => Look(Sound.Value[..chance.Next(Sound.Value.Length)])).ToList();
        Assert.Contains(outcomes, refused => refused);
    }

    /// <summary>Whether it was refused; any other exception fails the test.</summary>
    private bool Look(byte[] bytes)
    {
        var path = Path.Combine(folder, $"{Guid.NewGuid():N}.db");
        File.WriteAllBytes(path, bytes);
        try
        {
            EverythingInAFile.Read(path);
            return false;
        }
        catch (Exception refused) when (refused is RecordException or RefusedException)
        {
            Assert.NotEqual("", refused.Message);
            return true;
        }
    }
}
