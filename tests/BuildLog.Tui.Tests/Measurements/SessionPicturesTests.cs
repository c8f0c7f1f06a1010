using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Measurements;

/// <summary>Every guided session from its cautions over its set-up to its form, as pictures.</summary>
public sealed class SessionPicturesTests
{
    private static readonly DateOnly Today = new(2026, 5, 3);

    private static readonly IReadOnlyDictionary<string, Func<Form>> Sessions = new Dictionary<string, Func<Form>>(StringComparer.Ordinal)
    {
        ["teeth"] = () => TeethForm.For(new AxleComponent { Name = "Harrow banjo" }, Today, _ => { }),
        ["loaded-radius"] = () => LoadedRadiusForm.For(new WheelSetComponent { Name = "steel wheels" }, Today, _ => { }),
        ["road-test"] = () => RoadTestForm.For(new Vehicle { Name = "Kestrel" }, _ => new Driveline(), Today, _ => { }),
        ["speedometer-run"] = () => SpeedometerRunForm.For(new Vehicle { Name = "Kestrel" }, Today, _ => { }),
        ["weighbridge"] = () => WeighbridgeForm.For(new Vehicle { Name = "Kestrel" }, Today, _ => { }),
        ["propshaft-angles"] = () => PropshaftAnglesForm.For(new PropshaftComponent { Name = "rear shaft" }, Today, _ => { }),
        ["bolt-circle"] = () => BoltCircleForm.For(new AxleComponent { Name = "Harrow banjo" }, Today, _ => { }),
    };

    public static TheoryData<string, int, int> SessionsAndSizes
    {
        get
        {
            var all = new TheoryData<string, int, int>();
            foreach (var name in Sessions.Keys)
            {
                all.Add(name, 80, 24);
                all.Add(name, 120, 36);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(SessionsAndSizes))]
    public void Cautions_set_up_and_form_look_like_their_pictures(string name, int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var start = new Terminal.Gui.Views.Runnable();
        Step Picture(string part) => Check(s => ExpectedScreen.Matches($"{name}-{part}-{width}x{height}", s.Text));
        screen.Run(
            start,
            s =>
            {
                FormScreen.Fill(s.App, Sessions[name](), new Scratchpad());
                return true;
            },
            See("Before you start"), Picture("cautions"), Press((Key)'a'),
            See("Set up:"), Picture("set-up"), Press(Key.Enter),
            See("Ctrl+S"), Picture("form"), Press(Key.Esc),
            NoLongerSee("Ctrl+S"),
            s =>
            {
                s.App.RequestStop(start);
                return true;
            });
    }
}
