namespace BuildLog.Tui.Tests.Pty;

/// <summary>What a terminal does to a program while it runs: resize, stop and continue, a very long paste.</summary>
public sealed class MannersInTheTerminalTests : IDisposable
{
    private static readonly Dictionary<string, string?> Utf8 = new() { ["LC_ALL"] = "C.UTF-8" };

    private readonly string folder = Directory.CreateTempSubdirectory("manners").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_resize_in_a_dialog_redraws_it_and_what_was_typed_stays()
    {
        using var program = Start();
        program.Terminal.WaitFor("sheet");
        program.Terminal.Send("t"); // opens the sample form
        program.Terminal.WaitFor("what you call it");
        program.Terminal.Send("Kestrel");
        program.Terminal.WaitFor("Will be called Kestrel.");

        var before = program.Terminal.Raw.Length;
        program.Terminal.Resize(120, 36);
        program.Terminal.WaitFor("Will be called Kestrel.", before);

        before = program.Terminal.Raw.Length;
        program.Terminal.Resize(80, 24);
        program.Terminal.WaitFor("Will be called Kestrel.", before);
    }

    [Fact]
    public void A_paste_of_a_megabyte_is_refused_in_a_sentence_and_keys_still_work()
    {
        using var program = Start();
        program.Terminal.WaitFor("sheet");
        program.Terminal.Send("t");
        program.Terminal.WaitFor("what you call it");
        program.Terminal.Send($"\e[200~{new string('x', 1 << 20)}\e[201~");
        program.Terminal.WaitFor("Nothing was", seconds: 60);

        program.Terminal.Send("Heron");
        program.Terminal.WaitFor("Will be called Heron.");
    }

    [Fact]
    public void Ctrl_z_hands_the_terminal_to_the_shell_and_fg_brings_the_form_back_as_typed()
    {
        using var shell = new TerminalProgram(["bash", "--norc", "-i"], environment: Utf8);
        shell.Terminal.Send($"'{Environment.ProcessPath}' {Trial.Word} '{Path.Combine(folder, "errors.log")}'\n");
        shell.Terminal.WaitFor("sheet");
        shell.Terminal.Send("t");
        shell.Terminal.WaitFor("what you call it");
        shell.Terminal.Send("Kestrel");
        var typed = shell.Terminal.WaitFor("Will be called Kestrel.");

        shell.Terminal.Send("\x1a");
        var stopped = shell.Terminal.WaitFor("Stopped", typed);
        Assert.Contains("\e[?1049l", shell.Terminal.Raw[typed..stopped], StringComparison.Ordinal);

        shell.Terminal.Send("fg\n");
        shell.Terminal.WaitFor("Will be called Kestrel.", stopped);
    }

    private TerminalProgram Start() => new([Environment.ProcessPath!, Trial.Word, Path.Combine(folder, "errors.log")], environment: Utf8);
}
