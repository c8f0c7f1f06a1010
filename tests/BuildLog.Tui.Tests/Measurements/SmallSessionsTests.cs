using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Measurements;

/// <summary>The sessions that are typed and not counted, driven as forms.</summary>
public sealed class SmallSessionsTests
{
    private static readonly DateOnly Today = new(2026, 5, 3);

    // 67.2 mm adjacent on five studs: 67.2 / sin 36° = 114.3 mm.
    [Fact]
    public void A_chord_makes_the_bolt_circle_and_names_the_usual_pattern()
    {
        var axle = new AxleComponent { Name = "Harrow banjo" };
        var kept = new BoltCircleSession(axle);
        var form = BoltCircleForm.For(axle, Today, edit => edit(kept));
        Filled(form, ("studs", "5"), ("between", "Adjacent"), ("readings", "67.2 mm\n67.1 mm\n67.3 mm"), ("tool", "0.1 mm"));
        Assert.Equal((5, Chord.Adjacent, "0.1 mm", Today), (kept.Studs, kept.Between, kept.Tape, kept.Date));
        Assert.Equal(["67.2 mm", "67.1 mm", "67.3 mm"], kept.Readings);
        Assert.Equal(0.1143, kept.Result().Value, 0.0002);
        Assert.Contains(Said(form, ("studs", "5"), ("between", "Adjacent"), ("readings", "67.2")), line => line.Contains("5×114.3 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Across_five_studs_there_is_no_chord()
    {
        var axle = new AxleComponent { Name = "Harrow banjo" };
        Assert.Contains("none stands straight across", Refused(BoltCircleForm.For(axle, Today, edit => edit(new(axle))), ("between", "Across"), ("readings", "67.2")), StringComparison.Ordinal);
    }

    // (311 + 312 + 312 + 313) / 4 = 312.
    [Fact]
    public void The_loaded_radius_is_the_mean_of_the_readings()
    {
        var wheels = new WheelSetComponent { Name = "steel wheels" };
        var kept = new LoadedRadiusSession(wheels);
        Filled(LoadedRadiusForm.For(wheels, Today, edit => edit(kept)), ("readings", "311 mm\n312\n312\n313"));
        Assert.Equal(["311 mm", "312", "312", "313"], kept.Readings);
        Assert.Equal(0.312, kept.Result().Value, 0.0005);
    }

    [Fact]
    public void An_angle_that_was_not_typed_is_asked_for_in_plain_words()
    {
        var shaft = new PropshaftComponent { Name = "long shaft" };
        var form = PropshaftAnglesForm.For(shaft, Today, edit => edit(new(shaft)));
        Assert.Equal("An angle is missing, such as 5 deg.", form.Entries.First(entry => entry.Id == "shaft-side").Check!(new FormValues(new Dictionary<string, string>())));
    }

    [Fact]
    public void Teeth_are_kept_only_when_two_counts_agree()
    {
        var axle = new AxleComponent { Name = "Harrow banjo" };
        var kept = new TeethSession(axle);
        var form = TeethForm.For(axle, Today, edit => edit(kept));
        Assert.Contains("The counts differ, 41/10 and 43/10", Refused(form, ("first", "41/10"), ("second", "43/10")), StringComparison.Ordinal);
        Assert.Empty(kept.Readings);

        Filled(form, ("first", "41/10"), ("second", "41 / 10"));
        Assert.Equal(["41/10", "41 / 10"], kept.Readings);
        Assert.Equal(4.1, kept.Result().Ratio, 1e-12);
    }

    // 700 + 750 = 1450; 750 / 1450 = 52 %.
    [Fact]
    public void The_third_weighing_checks_the_other_two()
    {
        var vehicle = new Vehicle { Name = "Kestrel" };
        var kept = new WeighbridgeSession(vehicle);
        var form = WeighbridgeForm.For(vehicle, Today, edit => edit(kept));
        Assert.Contains(Said(form, ("front", "700 kg"), ("rear", "750 kg"), ("whole", "1460 kg")), line => line.Contains("52 %", StringComparison.Ordinal));
        Assert.Contains(Said(form, ("front", "700 kg"), ("rear", "750 kg"), ("whole", "1600 kg")), line => line.EndsWith("Weigh again.", StringComparison.Ordinal));

        Filled(form, ("front", "700 kg"), ("rear", "750 kg"), ("whole", "1460 kg"));
        Assert.Equal(["front 700 kg", "rear 750 kg", "whole 1460 kg"], kept.Readings);
        var weighing = kept.Result();
        Assert.Equal((700.0, 750.0, 1460.0), (weighing.Front!.Value, weighing.Rear!.Value, weighing.Whole!.Value));
    }

    // All of it on the front axle, and 1100 of 1500 kg, which are 73 %.
    [Fact]
    public void An_axle_that_carries_all_of_it_is_refused_and_an_unusual_share_is_asked_about()
    {
        var kept = new WeighbridgeSession(new Vehicle { Name = "Kestrel" });
        var form = WeighbridgeForm.For(new Vehicle { Name = "Kestrel" }, Today, edit => edit(kept));
        FormValues All(string front) => new(form.Entries.ToDictionary(entry => entry.Id, entry => entry.Id switch { "front" => front, "whole" => "1650.5 kg", _ => entry.Initial }));

        var refused = Assert.IsType<RefusedEntry>(form.Save(All("1650.5 kg")));
        Assert.Equal("front", refused.EntryId);
        Assert.StartsWith("The front axle would carry all of it", refused.Message, StringComparison.Ordinal);
        Assert.StartsWith("The front axle would carry all of it", Assert.Single(form.Echo!(All("1650.5 kg"))), StringComparison.Ordinal);
        Assert.Empty(kept.Readings);

        Assert.Empty(form.Echo(All("850 kg")));
        Assert.Contains(Said(form, ("front", "1100 kg"), ("rear", "400 kg")), line => line.StartsWith("73 % of it in front is unusual; 35 to 70 % is common practice", StringComparison.Ordinal));
    }

    [Fact]
    public void One_weighing_will_do_and_none_is_said_in_words_of_the_form()
    {
        var form = WeighbridgeForm.For(new Vehicle { Name = "Kestrel" }, Today, _ => { });
        var entry = form.Entries[0];

        Assert.Null(entry.Check!(new FormValues(new Dictionary<string, string> { ["whole"] = "1450 kg" })));
        Assert.StartsWith("Type what the display showed", entry.Check(new FormValues(new Dictionary<string, string>())), StringComparison.Ordinal);
    }

    // 5.0 - 3.5 = 1.5 at the front, 3.0 - 5.0 = 2.0 at the rear.
    [Fact]
    public void Shaft_angles_make_the_joints_angles()
    {
        var shaft = new PropshaftComponent { Name = "tube" };
        var kept = new ShaftAnglesSession(shaft);
        var form = PropshaftAnglesForm.For(shaft, Today, edit => edit(kept));
        (string, string)[] typed = [("output-side", "3.5 deg"), ("shaft-side", "5 deg"), ("pinion-side", "3 deg")];
        Assert.Contains(Said(form, typed), line => line.StartsWith("Front joint 1.5", StringComparison.Ordinal) && line.Contains("rear joint 2", StringComparison.Ordinal));
        Filled(form, typed);
        Assert.Equal(["output side 3.5 deg", "shaft side 5 deg", "pinion side 3 deg"], kept.Readings);
    }

    // 10.4 over 10.0 is 1.04; 1 / 1.04 = 0.96.
    [Fact]
    public void A_speedometer_run_says_the_share_and_the_correction()
    {
        var vehicle = new Vehicle { Name = "Kestrel" };
        var kept = new SpeedometerRunSession(vehicle);
        var form = SpeedometerRunForm.For(vehicle, Today, edit => edit(kept));
        Assert.Contains(Said(form, ("runs", "10 km: 10.4 km")), line => line.StartsWith("It shows 1.040 ±", StringComparison.Ordinal) && line.EndsWith("(95 %): high.", StringComparison.Ordinal));
        Filled(form, ("runs", "10 km: 10.4 km\n20 km: 20.8 km"));
        Assert.Equal(["10 km: 10.4 km", "20 km: 20.8 km"], kept.Readings);
        Assert.Equal(1.04, kept.Result().Share.Value, 1e-12);
        Assert.Equal(Today, kept.Date);
    }

    [Fact]
    public void A_session_that_is_put_right_opens_as_it_was_typed_and_stays_the_same()
    {
        var (axle, wheels, shaft, vehicle) = (new AxleComponent { Name = "a" }, new WheelSetComponent { Name = "w" }, new PropshaftComponent { Name = "p" }, new Vehicle { Name = "Kestrel" });
        StaysTheSame(new TeethSession(axle) { Readings = ["41/10", "41 / 10", "41:10"] }, (session, save) => TeethForm.For(axle, Today, save, session));
        StaysTheSame(new LoadedRadiusSession(wheels) { Readings = ["312 mm", "313"], Tape = "1 mm" }, (session, save) => LoadedRadiusForm.For(wheels, Today, save, session));
        StaysTheSame(new BoltCircleSession(axle) { Readings = ["67.2"], Tape = "0.05 mm", Studs = 6, Between = Chord.Across }, (session, save) => BoltCircleForm.For(axle, Today, save, session));
        StaysTheSame(new ShaftAnglesSession(shaft) { Readings = ["output side 3.5 deg", "output above 1 deg", "shaft side 5 deg", "pinion side 3 deg"] }, (session, save) => PropshaftAnglesForm.For(shaft, Today, save, session));
        StaysTheSame(new WeighbridgeSession(vehicle) { Readings = ["front 700 kg", "rear 750 kg", "whole 1450 kg"], Step = "10 kg" }, (session, save) => WeighbridgeForm.For(vehicle, Today, save, session));
        StaysTheSame(new SpeedometerRunSession(vehicle) { Readings = ["10 km: 10.4 km"], Tape = "20 m", Step = "0.2 km" }, (session, save) => SpeedometerRunForm.For(vehicle, Today, save, session));
    }

    [Fact]
    public void Every_session_has_cautions_a_drawing_and_a_help_page()
    {
        var vehicle = new Vehicle { Name = "Kestrel" };
        Form[] forms =
        [
            TeethForm.For(new AxleComponent { Name = "a" }, Today, _ => { }), LoadedRadiusForm.For(new WheelSetComponent { Name = "w" }, Today, _ => { }),
            BoltCircleForm.For(new AxleComponent { Name = "a" }, Today, _ => { }), WeighbridgeForm.For(vehicle, Today, _ => { }),
            PropshaftAnglesForm.For(new PropshaftComponent { Name = "p" }, Today, _ => { }), SpeedometerRunForm.For(vehicle, Today, _ => { }),
            RoadTestForm.For(vehicle, _ => new() { }, Today, _ => { }),
            TallyForms.Ready("gear 3", "GearCount", Cautions.GearCount, SetUps.GearCount), TallyForms.Ready("wheels", "RollOut", Cautions.RollOut, SetUps.RollOut),
        ];
        Assert.All(forms, form =>
        {
            Assert.NotEmpty(form.Cautions);
            Assert.Contains(form.SetUp, line => line.StartsWith("1 ", StringComparison.Ordinal));
            Assert.NotEmpty(HelpText.Of(form.HelpPage));
        });
    }

    private static void StaysTheSame<TSession>(TSession session, Func<TSession, Action<Action<TSession>>, Form> form)
        where TSession : Session
    {
        (session.Date, session.Helper, session.Conditions) = (new DateOnly(2026, 4, 1), "Odo", "cold");
        var before = (session.Date, session.Helper, session.Conditions, Result: MeasurementsWords.Result(session, UnitSystem.Metric).InWords);
        var readings = session.Readings;
        var shown = form(session, edit => edit(session));
        Assert.Empty(shown.Cautions);
        Filled(shown);
        Assert.Equal(readings, session.Readings);
        Assert.Equal(before, (session.Date, session.Helper, session.Conditions, MeasurementsWords.Result(session, UnitSystem.Metric).InWords));
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
