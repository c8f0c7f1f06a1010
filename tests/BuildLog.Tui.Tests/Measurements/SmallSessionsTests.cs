using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Shell;
using Drive = BuildLog.Data.RoadTests.RoadTest;

namespace BuildLog.Tui.Tests.Measurements;

/// <summary>The sessions that note one number, driven as forms.</summary>
public sealed class SmallSessionsTests
{
    private static readonly DateOnly Today = new(2026, 5, 3);

    // 67.2 mm adjacent on five studs: 67.2 / sin 36° = 114.3 mm.
    [Fact]
    public void A_chord_makes_the_bolt_circle_and_names_the_usual_pattern()
    {
        var axle = new AxleComponent { Name = "Harrow banjo" };
        var form = BoltCircleForm.For(axle, edit => edit(axle));
        Filled(form, ("studs", "5"), ("between", "Adjacent"), ("readings", "67.2 mm\n67.1 mm\n67.3 mm"));
        Assert.Equal(5, axle.Studs);
        Assert.Equal(0.1143, axle.PitchCircle!.Si, 0.0002);
        Assert.Contains(Said(form, ("studs", "5"), ("between", "Adjacent"), ("readings", "67.2")), line => line.Contains("5×114.3 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Across_five_studs_there_is_no_chord()
    {
        var axle = new AxleComponent { Name = "Harrow banjo" };
        Assert.Contains("none stands straight across", Refused(BoltCircleForm.For(axle, edit => edit(axle)), ("between", "Across"), ("readings", "67.2")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_loaded_radius_is_the_mean_of_the_readings()
    {
        var wheels = new WheelSetComponent { Name = "steel wheels" };
        Filled(LoadedRadiusForm.For(wheels, edit => edit(wheels)), ("readings", "311 mm\n312\n312\n313"));
        Assert.Equal(0.312, wheels.LoadedRadius!.Si, 0.0005);
        Assert.StartsWith("312 ±", wheels.LoadedRadius.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Teeth_are_kept_only_when_two_counts_agree()
    {
        var axle = new AxleComponent { Name = "Harrow banjo" };
        var form = TeethForm.For(axle, edit => edit(axle));
        Assert.Contains("The counts differ, 41/10 and 43/10", Refused(form, ("first", "41/10"), ("second", "43/10")), StringComparison.Ordinal);
        Assert.Null(axle.Teeth);

        Filled(form, ("first", "41/10"), ("second", "41/10"));
        Assert.Equal(4.1, axle.Teeth!.Value.Ratio, 1e-12);
    }

    // 700 + 750 = 1450; 750 / 1450 = 52 %.
    [Fact]
    public void The_third_weighing_checks_the_other_two()
    {
        var vehicle = new Vehicle { Name = "Kestrel" };
        var form = WeighbridgeForm.For(vehicle, edit => edit(vehicle));
        Assert.Contains(Said(form, ("front", "700 kg"), ("rear", "750 kg"), ("whole", "1460 kg")), line => line.Contains("52 %", StringComparison.Ordinal));
        Assert.Contains(Said(form, ("front", "700 kg"), ("rear", "750 kg"), ("whole", "1600 kg")), line => line.EndsWith("Weigh again.", StringComparison.Ordinal));

        Filled(form, ("front", "700 kg"), ("rear", "750 kg"), ("whole", "1460 kg"));
        Assert.Equal((700.0, 750.0, 1460.0), (vehicle.FrontAxleMass!.Si, vehicle.RearAxleMass!.Si, vehicle.Mass!.Si));
    }

    // 5.0 - 3.5 = 1.5 at the front, 3.0 - 5.0 = 2.0 at the rear.
    [Fact]
    public void Shaft_angles_make_the_joints_angles()
    {
        var shaft = new PropshaftComponent { Name = "tube" };
        var form = PropshaftAnglesForm.For(shaft, edit => edit(shaft));
        (string, string)[] typed = [("output-side", "3.5 deg"), ("shaft-side", "5 deg"), ("pinion-side", "3 deg")];
        Assert.Contains("Front joint 1.5°, rear joint 2°.", Said(form, typed));
        Filled(form, typed);
        Assert.Equal("5 deg", Assert.Single(shaft.Pieces).Side!.Text);
        Assert.Equal("3 deg", shaft.PinionSide!.Text);
    }

    // 10.4 over 10.0 is 1.04; 1 / 1.04 = 0.96.
    [Fact]
    public void A_speedometer_run_says_the_share_and_the_correction()
    {
        Drive? kept = null;
        var form = SpeedometerRunForm.For(new Vehicle { Name = "Kestrel" }, Today, edit => edit(kept = new Drive(new Vehicle())));
        Filled(form, ("real", "10 km"), ("shown", "10.4 km"));
        Assert.Contains("It shows 1.040 ±", kept!.Defects, StringComparison.Ordinal);
        Assert.Contains("(95 %): high.", kept.Defects, StringComparison.Ordinal);
        Assert.Equal(Today, kept.Date);
    }

    [Fact]
    public void Every_session_has_cautions_a_drawing_and_a_help_page()
    {
        var vehicle = new Vehicle { Name = "Kestrel" };
        Form[] forms =
        [
            TeethForm.For(new AxleComponent { Name = "a" }, _ => { }), LoadedRadiusForm.For(new WheelSetComponent { Name = "w" }, _ => { }),
            BoltCircleForm.For(new AxleComponent { Name = "a" }, _ => { }), WeighbridgeForm.For(vehicle, _ => { }),
            PropshaftAnglesForm.For(new PropshaftComponent { Name = "p" }, _ => { }), SpeedometerRunForm.For(vehicle, Today, _ => { }),
            RoadTestForm.For(vehicle, new() { }, Today, _ => { }),
            TallyForms.Ready("gear 3", "GearCount", Cautions.GearCount, SetUps.GearCount), TallyForms.Ready("wheels", "RollOut", Cautions.RollOut, SetUps.RollOut),
        ];
        Assert.All(forms, form =>
        {
            Assert.NotEmpty(form.Cautions);
            Assert.Contains(form.SetUp, line => line.StartsWith("1 ", StringComparison.Ordinal));
            Assert.NotEmpty(HelpText.Of(form.HelpPage));
        });
    }

    private static FormValues Values(Form form, (string Entry, string Text)[] typed)
    {
        var texts = form.Entries.ToDictionary(entry => entry.Id, entry => entry.Initial);
        foreach (var (entry, text) in typed) texts[entry] = text;
        return new FormValues(texts);
    }

    private static IReadOnlyList<string> Said(Form form, params (string Entry, string Text)[] typed) => form.Echo!(Values(form, typed));

    private static void Filled(Form form, params (string Entry, string Text)[] typed)
    {
        var values = Values(form, typed);
        Assert.All(form.Entries, entry => Assert.Null(entry.Check?.Invoke(values)));
        Assert.Same(SaveOutcome.Done, form.Save(values));
    }

    private static string Refused(Form form, params (string Entry, string Text)[] typed)
    {
        var values = Values(form, typed);
        return Assert.Single(form.Entries.Select(entry => entry.Check?.Invoke(values)).OfType<string>());
    }
}
