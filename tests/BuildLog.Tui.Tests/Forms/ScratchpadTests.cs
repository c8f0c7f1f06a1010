using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Forms;

public sealed class ScratchpadTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("scratchpad").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_was_typed_is_on_the_disk_before_anything_is_saved()
    {
        var form = new FormState(Asking(), Pad());
        form.Set("name", "Kes");
        form.Set("name", "Kestrel");
        Assert.Equal("Kestrel", Pad().Draft("Asking")!["name"]);
        Assert.Equal(["Asking"], Pad().Left);
    }

    [Fact]
    public void Saving_takes_the_draft_away_and_leaves_the_words_to_suggest()
    {
        var form = new FormState(Asking(), Pad());
        form.Set("helper", "Ada from next door");
        Assert.True(form.TrySave().Saved);
        Assert.Empty(Pad().Left);
        Assert.Equal("Ada from next door", Pad().Suggest("helper", "ada"));
        Assert.Null(Pad().Suggest("helper", "Ada from next door"));
        Assert.Null(Pad().Suggest("name", "A"));
    }

    [Fact]
    public void A_save_that_is_refused_keeps_the_draft()
    {
        var form = new FormState(Asking(_ => SaveOutcome.Refuse("The record is locked.")), Pad());
        form.Set("name", "Kestrel");
        Assert.False(form.TrySave().Saved);
        Assert.Equal("The record is locked.", form.FormMessage);
        Assert.Equal("Kestrel", Pad().Draft("Asking")!["name"]);
    }

    [Fact]
    public void Typing_back_what_stood_there_leaves_no_draft()
    {
        var form = new FormState(Asking(), Pad());
        form.Set("name", "K");
        form.Set("name", "");
        Assert.Empty(Pad().Left);
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_said_and_typing_goes_on()
    {
        var form = new FormState(Asking(), new Scratchpad(Path.Combine(folder, "gone", "typed.json")));
        form.Set("name", "Kestrel");
        Assert.Contains("would not outlive a crash", form.FormMessage, StringComparison.Ordinal);
        Assert.Equal("Kestrel", form.Text("name"));
    }

    [Fact]
    public void A_file_that_is_no_scratchpad_is_set_aside()
    {
        File.WriteAllText(File1, "{ half of a");
        Assert.Empty(Pad().Left);
        Assert.Equal("{ half of a", File.ReadAllText(File1 + ".unreadable"));
    }

    [Fact]
    public void A_form_left_half_filled_is_offered_again()
    {
        Pad().KeepDraft("Asking", new Dictionary<string, string> { ["name"] = "Kestrel" });
        FormValues? saved = null;
        var form = Asking(values =>
        {
            saved = values;
            return SaveOutcome.Done;
        });
        using var screen = new HeadlessScreen();
        using var behind = new Terminal.Gui.Views.Runnable();
        behind.IsRunningChanged += (_, e) =>
        {
            if (e.Value) screen.App.Invoke(() => FormScreen.Fill(screen.App, form, Pad()));
        };
        screen.Run(
            behind,
            Steps.See("Go on with what you typed?"),
            Steps.Press(Key.Enter),
            Steps.See("Kestrel"),
            Steps.Press(Key.S.WithCtrl),
            running =>
            {
                running.App.RequestStop(behind);
                return true;
            });
        Assert.Equal("Kestrel", saved!["name"]);
        Assert.Empty(Pad().Left);
    }

    [Fact]
    public void Right_at_the_end_of_a_text_takes_the_suggestion()
    {
        var pad = Pad();
        pad.Remember(new Dictionary<string, string> { ["helper"] = "Ada from next door" });
        using var screen = new HeadlessScreen();
        using var form = new FormScreen(Asking(), pad);
        screen.Show(form).Press(Key.Tab).Type("Ad");
        Assert.Contains("writes Ada from next door", screen.Text, StringComparison.Ordinal);

        screen.Press(Key.CursorRight);
        Assert.Equal("Ada from next door", pad.Draft("Asking")!["helper"]);
    }

    private string File1 => Path.Combine(folder, "shop.typed.json");

    private Scratchpad Pad() => new(File1);

    private static Form Asking(Func<FormValues, SaveOutcome>? save = null) => new()
    {
        Title = "Asking",
        Entries = [new TextEntry("name", "Name"), new TextEntry("helper", "Helper") { IsRemembered = true }],
        Save = save ?? (_ => SaveOutcome.Done),
    };
}
