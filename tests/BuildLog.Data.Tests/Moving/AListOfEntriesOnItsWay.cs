using System.Text;
using System.Text.Json;
using BuildLog.Data.Moving;
using Xunit;

namespace BuildLog.Data.Tests.Moving;

/// <summary>A list is read off a stream as it comes, however it is cut into pieces.</summary>
public sealed class AListOfEntriesOnItsWay
{
    private const int Longest = 128 * 1024;

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(100_000)]
    public void Is_read_entry_by_entry(int piece)
    {
        var texts = Enumerable.Range(0, 3000).Select(k => $$"""{ "number": {{k}}, "text": "½ in of {{new string('x', k % 90)}}" }""").ToList();
        var read = Read($"\n[ {string.Join(" ,\r\n", texts)} ]\n\n", piece);
        Assert.Equal(texts, read);
    }

    [Fact]
    public void May_hold_an_entry_longer_than_what_is_read_at_once()
    {
        var text = $"\"{new string('x', 100_000)}\"";
        Assert.Equal([text, "1"], Read($"[{text},1]", 4096));
    }

    [Fact]
    public void May_be_empty() => Assert.Empty(Read("[]", 1));

    [Theory]
    [InlineData("{\"number\": 1}", "no list")]
    [InlineData("5", "no list")]
    [InlineData("", "no JSON in line 1")]
    [InlineData("[1,\n2,\n", "no JSON in line 3")]
    [InlineData("[1,\n2,]", "no JSON in line 2")]
    [InlineData("[1,\n2]\n]", "no JSON in line 3")]
    [InlineData("[1]\n[2]", "no JSON in line 2")]
    public void Is_refused_where_it_is_none(string text, string says)
    {
        foreach (var piece in (int[])[1, 1000])
        {
            try
            {
                Read(text, piece);
                Assert.Fail($"{text} was taken.");
            }
            catch (JsonException broken)
            {
                Assert.Equal(says, FormattableString.Invariant($"no JSON in line {broken.LineNumber + 1}"));
            }
            catch (InvalidDataException refused)
            {
                Assert.Equal(says, refused.Message);
            }
        }
    }

    [Fact]
    public void Is_refused_where_an_entry_has_no_end()
        => Assert.Equal("too long", Assert.Throws<InvalidDataException>(() => Read($"[\"{new string('x', 3 * Longest)}\"]", 4096)).Message);

    private static List<string> Read(string json, int piece)
    {
        using var stream = new InPieces(Encoding.UTF8.GetBytes(json), piece);
        var list = new JsonList(stream, () => new InvalidDataException("no list"), Longest, () => new InvalidDataException("too long"));
        var read = new List<string>();
        while (list.Next() is { } entry) read.Add(entry.GetRawText());
        return read;
    }

    private sealed class InPieces(byte[] bytes, int piece) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) => base.Read(buffer, offset, Math.Min(count, piece));
    }
}
