using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace BuildLog.Tui.Tests.Commands;

/// <summary>Photos and papers from a file on the disk to the record and back, and what is said of one that is gone.</summary>
public sealed class AttachmentCommandsTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-attach-").FullName;

    public AttachmentCommandsTests() => Assert.Equal(0, Said.By("backup", Record, "--demo").ExitCode);

    private string Record => Path.Combine(folder, "shop.db");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Come_back_as_they_went_in()
    {
        var (photo, receipt) = (File("pinion.jpg", "light"), File("brakes.pdf", "48.60 EUR"));
        Assert.Equal("Kept pinion.jpg (photo, 5 bytes) with Harrow yard axle.\n", Said.By("attach", photo, "--to", "Harrow yard", "--taken", "spring 2024", "--database", Record).Output.ReplaceLineEndings("\n"));
        var kept = Said.By("attach", receipt, "--to", "job rear", "--what", "receipt", "--caption", "union and line", "--database", Record, "--json").Json;
        Assert.Equal(("receipt", "application/pdf", 9), (kept.GetProperty("what").GetString(), kept.GetProperty("mediaType").GetString(), kept.GetProperty("bytes").GetInt32()));

        var saved = Directory.CreateDirectory(Path.Combine(folder, "saved")).FullName;
        var listed = Attachments("--save", saved);
        Assert.Equal(
            [("pinion.jpg", "axle Harrow yard axle", "sound"), ("brakes.pdf", "job rear brake lines", "sound")],
            listed.Select(one => (one.GetProperty("name").GetString()!, one.GetProperty("about").GetString()!, one.GetProperty("state").GetString()!)));
        Assert.Equal(["light", "48.60 EUR"], listed.Select(one => System.IO.File.ReadAllText(one.GetProperty("saved").GetString()!)));
        Assert.Equal("spring 2024", listed[0].GetProperty("taken").GetString());

        // What is there is not replaced.
        var again = Said.By("attachments", "Brindle", "--save", saved, "--database", Record);
        Assert.Equal(3, again.ExitCode);
        Assert.Contains("pinion.jpg is there already", again.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Are_kept_once_and_saved_under_a_name_each()
    {
        Said.By("attach", File("same.jpg", "light"), "--to", "Brindle", "--database", Record);
        Said.By("attach", File("same.jpg", "light"), "--to", "Harrow yard", "--database", Record);
        Assert.Single(Stored("light"));
        Assert.Equal(["same.jpg", "same (2).jpg"], Attachments("--save", Directory.CreateDirectory(Path.Combine(folder, "saved")).FullName).Select(one => Path.GetFileName(one.GetProperty("saved").GetString())));
    }

    [Theory]
    [InlineData(true, "missing")]
    [InlineData(false, "altered")]
    public void Are_named_where_the_file_is_gone_or_spoilt(bool gone, string state)
    {
        Said.By("attach", File("pinion.jpg", "light"), "--to", "Brindle", "--database", Record);
        var stored = Stored("light").Single();
        if (gone) System.IO.File.Delete(stored);
        else System.IO.File.WriteAllText(stored, "dark");

        Assert.Equal(state, Assert.Single(Attachments()).GetProperty("state").GetString());
        var check = Said.By("check-database", "--database", Record);
        Assert.Equal(3, check.ExitCode);
        Assert.Contains($"pinion.jpg ({Path.GetFileName(stored)[..12]}…)", check.Output, StringComparison.Ordinal);

        // Attached again it is whole again.
        Said.By("attach", File("pinion.jpg", "light"), "--to", "Brindle", "--database", Record);
        Assert.Equal(0, Said.By("check-database", "--database", Record).ExitCode);
    }

    [Theory]
    [InlineData("There is no file", "attach", "gone.jpg", "--to", "Brindle")]
    [InlineData("--to: Nothing in the record is called 'Zzz'", "attach", "pinion.jpg", "--to", "Zzz")]
    [InlineData("--to: 'Harrow' could be axle Harrow axle, the frame's own", "attach", "pinion.jpg", "--to", "Harrow")]
    [InlineData("--what: 'film' is no kind of file", "attach", "pinion.jpg", "--to", "Brindle", "--what", "film")]
    [InlineData("0 bytes", "attach", "empty.jpg", "--to", "Brindle")]
    public void Are_refused_in_a_sentence(string sentence, params string[] arguments)
    {
        File("pinion.jpg", "light");
        File("empty.jpg", "");
        arguments[1] = Path.Combine(folder, arguments[1]);
        var said = Said.By([.. arguments, "--database", Record]);
        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
        Assert.Empty(Attachments());
    }

    private List<JsonElement> Attachments(params string[] more)
        => [.. Said.By(["attachments", "Brindle", "--database", Record, "--json", .. more]).Json.GetProperty("attachments").EnumerateArray()];

    private string[] Stored(string content)
        => Directory.GetFiles(Path.Combine(folder, "shop.files"), Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content))), SearchOption.AllDirectories);

    private string File(string name, string content)
    {
        var path = Path.Combine(folder, name);
        System.IO.File.WriteAllText(path, content);
        return path;
    }
}
