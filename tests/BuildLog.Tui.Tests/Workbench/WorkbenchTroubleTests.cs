using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class WorkbenchTroubleTests : IDisposable
{
    private readonly HeadlessScreen screen = new();
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;

    public void Dispose()
    {
        screen.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void An_act_that_fails_becomes_a_sentence_and_an_entry_and_the_run_goes_on()
    {
        var log = new ErrorLog(Path.Combine(folder, "state", "errors.log"));
        var acts = new RecordingActs(InventedShop.Workbench())
        {
            OnNewVehicle = () => throw new InvalidOperationException("The record is on a stick that was pulled out."),
        };
        using var workbench = new WorkbenchScreen(acts, InventedShop.Pages());
        screen.Run(
            workbench,
            error => TerminalSession.Report(screen.App, log, error),
            Steps.Press((Key)'n'),
            Steps.See("The record is on a stick that was pulled out."),
            Steps.Check(s => Assert.DoesNotContain("InvalidOperationException", s.Text, StringComparison.Ordinal)),
            Steps.Press(Key.Esc),
            Steps.NoLongerSee("Something went wrong"),
            Steps.Press((Key)'s'),
            Steps.See("Wrote heron-estate.pdf"),
            Steps.Press((Key)'q'));

        Assert.Contains("InvalidOperationException: The record is on a stick", File.ReadAllText(log.Path), StringComparison.Ordinal);
    }

    // A change tries for three seconds by itself; then it says that it waits, and past a dozen gives up.
    [Fact]
    public void A_change_that_waits_for_another_program_says_so_on_the_screen_and_not_for_ever()
    {
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench);
        Assert.True(WorkbenchStart.Wait(screen.App, workbench, new(Path.Combine("shop", "shop.db"), TimeSpan.FromSeconds(3))));
        Assert.Contains("Waiting, 3 s so far: another program is writing to", screen.Text, StringComparison.Ordinal);
        Assert.Contains("3 s so far", workbench.Messages[0], StringComparison.Ordinal);
        Assert.False(WorkbenchStart.Wait(screen.App, workbench, new(Path.Combine("shop", "shop.db"), TimeSpan.FromSeconds(12))));
    }

    // A form that fills the screen hides the status line, so it says so itself, and has its keys again when the waiting is over.
    [Fact]
    public void A_form_that_waits_says_so_in_place_of_its_keys()
    {
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench);
        using var form = new FormScreen(Tests.Forms.VehicleForm.With());
        screen.Show(form);
        Assert.Contains("Esc leave", screen.Text, StringComparison.Ordinal);

        Assert.True(WorkbenchStart.Wait(screen.App, workbench, new("shop.db", TimeSpan.FromSeconds(3))));
        Assert.Contains("Waiting, 3 s so far: another program is writing to shop.db", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Esc leave", screen.Text, StringComparison.Ordinal);

        Assert.False(WorkbenchStart.Wait(screen.App, workbench, new("shop.db", TimeSpan.FromSeconds(12))));
        Assert.Contains("Esc leave", screen.Text, StringComparison.Ordinal);
    }

    // Each would hold the screen for as long again: struck three times in impatience, the program seemed to hang.
    [Fact]
    public void Saving_struck_again_while_the_first_one_waits_is_one_wish()
    {
        var saves = 0;
        using var form = new FormScreen(Tests.Forms.VehicleForm.With(_ =>
        {
            saves++;
            ((Popup)screen.App.TopRunnableView!).SayMeanwhile("Waiting, 12 s so far.");
            return SaveOutcome.Refuse("Another program holds the record.");
        }));
        screen.Run(
            form,
            Steps.Type("Heron"),
            s =>
            {
                for (var i = 0; i < 3; i++) s.App.InjectKey(Key.S.WithCtrl);
                return true;
            },
            Steps.See("Another program holds the record."),
            Steps.Check(_ => Assert.Equal(1, saves)),
            Steps.Press(Key.S.WithCtrl),
            _ => saves == 2,
            s =>
            {
                s.App.RequestStop(form);
                return true;
            });
        Assert.Equal(2, saves);
    }

    [Fact]
    public void A_record_that_cannot_be_written_just_now_is_said_in_the_status_line()
    {
        var acts = new RecordingActs(InventedShop.Workbench()) { OnNewVehicle = () => throw new RecordException(Fault.Busy, "Another program holds the record; nothing was changed.") };
        using var workbench = new WorkbenchScreen(acts, InventedShop.Pages());
        screen.Run(workbench, Steps.Press((Key)'n'), Steps.See("Another program holds the record"), Steps.Check(s => Assert.DoesNotContain("Something went wrong", s.Text, StringComparison.Ordinal)), Steps.Press((Key)'q'));
    }

    [Fact]
    public void What_is_refused_is_said_in_the_status_line()
    {
        var acts = new RecordingActs(InventedShop.Workbench()) { OnNewVehicle = () => throw new RefusedException("undo", "Nothing was undone that could be done again.", "") };
        using var workbench = new WorkbenchScreen(acts, InventedShop.Pages());
        screen.Run(workbench, Steps.Press((Key)'n'), Steps.See("Nothing was undone that could be done again."), Steps.Check(s => Assert.DoesNotContain("Something went wrong", s.Text, StringComparison.Ordinal)), Steps.Press((Key)'q'));
    }

    // Otherwise the list would point at one vehicle, and the next key act on another.
    [Fact]
    public void A_vehicle_that_cannot_be_read_is_a_sentence_and_the_list_stays_at_the_one_on_the_bench()
    {
        var acts = new RecordingActs(InventedShop.Workbench()) { OnChoose = () => throw new RecordException(Fault.Busy, "Another program holds the record.") };
        using var workbench = new WorkbenchScreen(acts, InventedShop.Pages());
        screen.Show(workbench);
        var before = screen.Row(screen.Find("›").Y);
        screen.Press(Key.CursorDown);
        Assert.Contains("Another program holds the record.", screen.Text, StringComparison.Ordinal);
        Assert.Equal(before, screen.Row(screen.Find("›").Y));
        Assert.StartsWith("choose", acts.Asked[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_log_is_for_its_owner_only()
    {
        var log = new ErrorLog(Path.Combine(folder, "errors.log"));
        Assert.True(log.Write(new InvalidOperationException("first")));
        Assert.True(log.Write(new InvalidOperationException("second")));

        Assert.Contains("first", File.ReadAllText(log.Path), StringComparison.Ordinal);
        Assert.Contains("second", File.ReadAllText(log.Path), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(log.Path));
    }

    [Fact]
    public void A_log_that_cannot_be_written_says_so_and_does_no_more_harm()
    {
        var inTheWay = Path.Combine(folder, "file");
        File.WriteAllText(inTheWay, "");
        Assert.False(new ErrorLog(Path.Combine(inTheWay, "errors.log")).Write(new InvalidOperationException("lost")));
    }

    [Fact]
    public void Names_cannot_send_control_sequences()
    {
        var nasty = InventedShop.Workbench() with { Banner = "\e]0;owned\a\e[31mred" };
        using var workbench = new WorkbenchScreen(new RecordingActs(nasty), InventedShop.Pages());
        screen.Show(workbench);
        Assert.DoesNotContain('\a', screen.App.Driver!.GetOutput().GetLastOutput());
        Assert.Contains("]0;owned", screen.Row(0), StringComparison.Ordinal);
    }
}
