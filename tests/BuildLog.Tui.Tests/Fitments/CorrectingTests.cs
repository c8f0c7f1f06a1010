using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Fitments;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Fitments;

/// <summary>Bittern with gearbox, axle, tyres and a cruise goal; then what was entered wrongly is put right.</summary>
public sealed class CorrectingTests : IDisposable
{
    private readonly SmallShop small = new();
    private readonly WorkbenchActs acts;
    private readonly AnsweringView view;

    public CorrectingTests()
    {
        acts = new(small.Shop, small.Clock, UnitSystem.Metric);
        view = new(acts.Open());
        acts.FitPart(view.Type(("part", "Pinewood four-speed"), ("gears", "3.64 2.09 1.38 1.00"), ("day", "1 May 2026")), nameof(Position.Transmission));
        acts.FitPart(view.Type(("part", "Harrow banjo"), ("ratio", "4.10"), ("day", "1 May 2026")), nameof(Position.RearAxle));
        acts.FitPart(view.Type(("part", "steel wheels"), ("circumference", "2.00 m"), ("day", "1 May 2026")), nameof(Position.Tyres));
        acts.EditGoal(view.Pick("cruise").Type(("speed", "120 km/h"), ("engine", "3000 rpm")));
        Assert.Empty(view.Refused);
    }

    private long Bittern => small.Bittern.Id;

    public void Dispose() => small.Dispose();

    // 120 km/h = 33.33 m/s; / 2.00 m = 16.67 rev/s = 1000 rev/min of the wheels: 4100 with 4.10, 3000 with 3.00.
    [Fact]
    public void A_swap_says_what_it_did_to_cruise_and_findings()
    {
        acts.FitPart(view.Pick("new").Type(("part", "Harrow long"), ("ratio", "3.00"), ("day", "10 May 2026")), nameof(Position.RearAxle));

        var swap = view.Model.Chosen!.History.Rows[0];
        Assert.StartsWith("41", swap.CruiseBefore, StringComparison.Ordinal);
        Assert.StartsWith("30", swap.CruiseAfter, StringComparison.Ordinal);
        Assert.StartsWith("1 clash", swap.Findings, StringComparison.Ordinal);
        Assert.DoesNotContain("clash", swap.Findings.Split('→')[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_form_says_it_before_it_is_saved()
    {
        var before = small.Shop.DrivelineOn(small.Bittern, new(2026, 5, 20)).Driveline;
        var longer = new Data.Components.AxleComponent { Name = "Harrow long", StatedRatio = Data.Noted.Ratio("3.00", Gearing.Ratios.RatioRange.Axle, Gearing.Measurements.Source.Tag) };

        var effect = EffectWords.Of(before, small.Shop.Trying(before, Position.RearAxle, [longer])[0], small.Shop.GoalsOf(small.Bittern));

        Assert.StartsWith("Cruise    4100", effect[0], StringComparison.Ordinal);
        Assert.Contains("→ 3000", effect[0], StringComparison.Ordinal);
        Assert.StartsWith("Findings  1 clash", effect[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Taking_a_part_off_says_what_that_does_before_it_is_saved()
    {
        acts.FitPart(view.Pick("off").Look(), nameof(Position.RearAxle));

        Assert.Contains(view.Echoes, line => line.StartsWith("Cruise    4100", StringComparison.Ordinal) && line.EndsWith("→ cannot be said", StringComparison.Ordinal));
        Assert.Contains(view.Echoes, line => line.StartsWith("Findings  1 clash", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_that_another_vehicle_has_is_refused_beside_it()
    {
        acts.NewVehicle(view.Type(("name", " BITTERN ")));
        Assert.Equal(["Bittern is in the shop already: give this one a name of its own."], view.Refused);

        view.Refused.Clear();
        acts.EditVehicle(view.Type(("name", "bittern"), ("owner", "Ann Ferrow")));
        Assert.Equal("Changed.", view.Said[^1]);
    }

    [Fact]
    public void What_cannot_be_measured_yet_is_listed_with_what_it_waits_for()
    {
        acts.Measure(view.Pick(SessionKind.ShaftAngles.Words));
        Assert.Equal("Bittern, angles of a propshaft: fit one of one piece first (f).", view.Said[^1]);

        acts.Measure(view, SessionKind.ShaftAngles); // asks nothing: there is only this
        Assert.Equal("Bittern, angles of a propshaft: fit one of one piece first (f).", view.Said[^1]);
    }

    // Spring goes on for eleven days after the clock's 20 May.
    [Fact]
    public void A_day_half_remembered_is_doubted_on_the_bench_and_on_the_sheet()
    {
        small.Shop.FitSometime(small.Shop.Add(new Data.Components.AxleComponent { Name = "front axle" }), small.Bittern, Position.FrontAxle, Data.Days.LooseDay.Read("spring 2026")!);
        acts.ChooseVehicle(view, Bittern);

        var doubt = Assert.Single(view.Model.Chosen!.History.Doubts!);
        Assert.StartsWith("It is not certain of 20 May 2026: the front axle (front axle) was fitted at a day typed as 'spring 2026'", doubt, StringComparison.Ordinal);
        Assert.Contains("not certain, see History", view.Model.Chosen.Facts, StringComparison.Ordinal);
        Assert.Contains(HistoryText.Of(view.Model.Chosen.History.Rows[0], view.Model.Chosen.History.Doubts!), line => line.Text == doubt);
        var bench = VehicleOnBench.Read(small.Shop, small.Bittern, new(2026, 5, 20));
        var sheet = Tui.Sheets.SheetOfVehicle.Content(bench, Tui.Sheets.VehicleFolder.Read(small.Shop, small.Bittern), new(BuildLog.Sheet.Content.SheetReader.Buyer), UnitSystem.Metric, DateTimeOffset.UnixEpoch);
        Assert.Contains(doubt, sheet.Assumptions);
    }

    [Fact]
    public void The_day_and_the_reason_of_a_swap_are_corrected()
    {
        var row = Index("Harrow banjo");
        new FitmentActs(small.Shop, small.Clock).Correct(view.Type(("from", "28 April 2026"), ("reason", "came with it")), Bittern, row);

        Assert.Empty(view.Refused);
        var fitment = small.Shop.Fitments(small.Bittern).Single(each => each.Component.Name == "Harrow banjo");
        Assert.Equal((new DateOnly(2026, 4, 28), "came with it"), (fitment.From, fitment.Reason));
    }

    [Fact]
    public void A_swap_that_never_was_is_struck_and_comes_back_by_undo()
    {
        new FitmentActs(small.Shop, small.Clock).Strike(Bittern, Index("Harrow banjo"));
        acts.ShowAgain(view, "struck");
        Assert.DoesNotContain(view.Model.Chosen!.History.Rows, row => row.Fitted == "Harrow banjo");

        acts.Undo(view);
        Assert.Contains(view.Model.Chosen!.History.Rows, row => row.Fitted == "Harrow banjo");
    }

    [Fact]
    public void A_session_entered_by_mistake_is_struck()
    {
        acts.RollOut(view.Pick("typed").Type(("loaded", "yes"), ("rolls", "1:2005 mm\n5:10.02 m")));
        var session = Assert.Single(view.Model.Chosen!.Measurements.Rows);

        Sessions.Strike(Bittern, session.Id);
        acts.ShowAgain(view, "struck");
        Assert.Empty(view.Model.Chosen!.Measurements.Rows);
    }

    // Two tenths of a metre were slipped in: 5 turns cover 10.02 m, 2.004 m each.
    [Fact]
    public void A_session_read_wrongly_is_corrected_without_rolling_again()
    {
        acts.RollOut(view.Pick("typed").Type(("loaded", "yes"), ("rolls", "5:10.22 m"), ("pressure", "2.2 bar")));
        var session = Assert.Single(view.Model.Chosen!.Measurements.Rows);

        var said = Sessions.Correct(view.Type(("rolls", "5:10.02 m")), Bittern, session.Id);
        acts.ShowAgain(view, said!);

        Assert.Empty(view.Refused);
        var row = Assert.Single(view.Model.Chosen!.Measurements.Rows);
        Assert.Equal(["5:10.02 m"], row.Readings);
        Assert.Contains(row.Conditions!, line => line.Contains("2.2 bar", StringComparison.Ordinal));
        Assert.StartsWith("2.00", row.Result, StringComparison.Ordinal);
    }

    // The tag was misread: 3.00 turns the engine 3000 at 120 km/h, and nothing is stored while it is only typed.
    [Fact]
    public void The_form_that_corrects_a_part_says_what_its_numbers_would_do()
    {
        acts.FitPart(view.Pick("edit").Look(("ratio", "3.00")), nameof(Position.RearAxle));

        Assert.Contains(view.Echoes, line => line.StartsWith("Cruise    4100", StringComparison.Ordinal) && line.Contains("→ 3000", StringComparison.Ordinal));
        Assert.Contains(view.Echoes, line => line.StartsWith("Findings  1 clash", StringComparison.Ordinal));
        Assert.StartsWith("4.10", view.Model.Chosen!.Driveline.Boxes.Single(box => box.Part == "Harrow banjo").Number, StringComparison.Ordinal);
    }

    [Fact]
    public void A_parts_card_holds_its_numbers_and_its_life()
    {
        var card = acts.Card(Bittern, view.Model.Chosen!.Driveline.Boxes.Single(box => box.Part == "Harrow banjo"));

        Assert.Contains(card, line => line.Contains("ratio  4.10", StringComparison.Ordinal));
        Assert.Contains(card, line => line.Contains("Bittern, as axle from 1 May 2026", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fitted_part_is_found_on_its_vehicle()
    {
        var place = Assert.Single(acts.Find("banjo"), each => each.Kind == "axle");
        Assert.Equal(Bittern, place.VehicleId);
    }

    [Fact]
    public void Where_there_is_nothing_to_redo_a_sentence_says_so()
    {
        Assert.Contains("Nothing was undone", Assert.Throws<RefusedException>(() => acts.Redo(view)).Message, StringComparison.Ordinal);
        Assert.Equal(3, view.Model.Chosen!.History.Rows.Count);
    }

    private SessionActs Sessions => new(small.Shop, small.Clock, new());

    private int Index(string fitted) => view.Model.Chosen!.History.Rows.Select((row, i) => (row, i)).Single(each => each.row.Fitted == fitted).i;
}
