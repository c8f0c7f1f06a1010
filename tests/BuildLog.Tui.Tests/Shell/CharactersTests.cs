using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Shell;

public sealed class CharactersTests
{
    [Theory]
    [InlineData("┌─┐│└┘", "+-+|++")]
    [InlineData("4.10 ± 0.02", "4.10+/-0.02")]
    [InlineData("(•) 3.5°, 205 N·m …", "(*) 3.5d, 205 N.m..")]
    [InlineData("Café ⣿⡀ ", "Cafe *. ")]
    [InlineData("▌axle ± 0.02", ">axle+/-0.02")]
    [InlineData("± 0.02, 2.4 ±", "+-0.02, 2.4+-")]
    [InlineData("99\u00A0%, 1\u202F450 kg", "99 %, 1 450 kg")]
    [InlineData("‹─ 6 Jobs", "<- 6 Jobs")]
    [InlineData("plain", "plain")]
    [InlineData("漢字", "????")]
    public void Every_cell_has_a_plain_stand_in(string text, string ascii)
    {
        Assert.Equal(ascii, Characters.ToAscii(text));
        Assert.Equal(TextFit.Width(text), Characters.ToAscii(text).Length);
    }

    // A watch is told by its sign where there are no colours: nothing else may look like it.
    [Fact]
    public void The_sign_of_a_watch_stands_for_nothing_else()
        => Assert.DoesNotContain('~', Characters.ToAscii("4.10±0.02 ± 0.02 … cut… ≈ ‑ – — · • → › × ½ ° ⣿ ▌ ■ ● ╌ ─"));

    [Theory]
    [InlineData("xterm-256color", "C.UTF-8", null, false)]
    [InlineData("xterm-256color", null, null, false)]
    [InlineData("xterm-256color", "C", null, true)]
    [InlineData("xterm", "de_DE.ISO-8859-1", null, true)]
    [InlineData("linux", "en_GB.UTF-8", null, true)]
    [InlineData("dumb", "en_GB.utf8", null, true)]
    [InlineData("linux", "C", "unicode", false)]
    [InlineData("xterm", "C.UTF-8", "ascii", true)]
    public void Terminal_locale_or_owner_ask_for_ascii(string term, string? lang, string? asked, bool ascii)
        => Assert.Equal(ascii, Characters.AsciiIn(name => name switch { "TERM" => term, "LANG" => lang, "BUILDLOG_CHARACTERS" => asked, _ => null }));
}
