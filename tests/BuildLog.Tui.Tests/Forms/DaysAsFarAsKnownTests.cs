using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Decisions;
using BuildLog.Data.Notes;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Languages;
using BuildLog.Tui.Decisions;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Jobs;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Commands;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Forms;

/// <summary>Whatever has been may be known no better than by its season, and is kept and shown as it was typed; what is due is a day.</summary>
public sealed class DaysAsFarAsKnownTests : IDisposable
{
    private static readonly DateOnly Today = new(2026, 5, 20);

    private readonly SmallShop small = new();
    private readonly AnsweringView view = new(WorkbenchModel.EmptyShop);

    public void Dispose() => small.Dispose();

    [Fact]
    public void Work_costs_and_deadlines_take_them()
    {
        small.WithWork();
        var acts = new JobsActs(small.Shop, small.Clock);
        JobRow Row(string title) => acts.Read(small.Bittern.Id).Rows.Single(row => row.Title == title);

        Assert.NotNull(acts.Hours(view.Type(("hours", "2 h"), ("day", "spring 2025")), small.Bittern.Id, Row("Fit the axle")));
        Assert.NotNull(acts.Spend(view.Type(("what", "oil"), ("amount", "20"), ("day", "about 2024")), small.Bittern.Id, Row("Fit the axle")));
        Assert.NotNull(acts.GiveOut(view.Type(("what", "bearings"), ("to", "Tolland machine shop"), ("sent", "May 2025")), small.Bittern.Id, Row("Fit the axle")));
        Assert.Contains(Row("Fit the axle").Lines, line => line.StartsWith("spring 2025  2:00 h", StringComparison.Ordinal));
        Assert.Contains(Row("Fit the axle").Lines, line => line.StartsWith("about 2024  20.00 EUR", StringComparison.Ordinal));
        Assert.Contains(Row("Fit the axle").Lines, line => line.StartsWith("May 2025  sent to Tolland", StringComparison.Ordinal));

        Assert.NotNull(acts.GiveOut(view.Type(("back", "summer 2025")), small.Bittern.Id, Row("Fit the axle")));
        Assert.Contains(Row("Fit the axle").Lines, line => line.EndsWith(", back summer 2025", StringComparison.Ordinal));

        Assert.NotNull(acts.Edit(view.Type(("done", "early 2026")), small.Bittern.Id, Row("test station, second look")));
        Assert.Contains("Done: early 2026.", Row("test station, second look").Lines);
        Assert.Empty(view.Refused);
    }

    [Fact]
    public void What_is_due_is_a_single_day_and_the_refusal_shows_one()
    {
        var acts = new JobsActs(small.Shop, small.Clock);
        Assert.Null(acts.Add(view.Pick("job").Type(("title", "Balance"), ("due", "spring 2027")), small.Bittern.Id));
        Assert.Contains("'spring 2027' is no single day; one is needed here", Assert.Single(view.Refused), StringComparison.Ordinal);
        Assert.Contains("3 May 2026", view.Refused[0], StringComparison.Ordinal);
        Assert.Empty(acts.Read(small.Bittern.Id).Rows);
    }

    [Fact]
    public void Decisions_notes_sessions_and_road_tests_take_them()
    {
        var decision = new Decision(small.Bittern);
        DecisionForm.For(decision, Today, edit => edit(decision)).Save(Filled(("what", "axle 3.08"), ("day", "winter 2023"), ("agreed", ""), ("why", "")));
        var note = new Note(small.Bittern);
        DecisionForm.For(note, Today, edit => edit(note)).Save(Filled(("title", "seal"), ("day", "2023"), ("body", "weeps")));
        var session = new TeethSession(new AxleComponent { Name = "axle" });
        TeethForm.For(new AxleComponent { Name = "axle" }, Today, edit => edit(session)).Save(Filled(("first", "41/10"), ("second", "41/10"), ("date", "May 2024"), ("helper", ""), ("conditions", "")));
        var drive = new RoadTest(small.Bittern);
        RoadTestForm.For(small.Bittern, _ => new Driveline(), Today, edit => edit(drive)).Save(Filled(
            ("speed", "80 km/h"), ("engine", "2450 rpm"), ("gear", ""), ("temperatures", ""), ("vibration", ""), ("noises", ""), ("defects", ""), ("day", "spring 2024")));

        Assert.Equal(["winter 2023", "2023", "May 2024", "spring 2024"], new Dated[] { decision, note, session, drive }.Select(each => each.Day.Text));
        Assert.Equal(new DateOnly(2024, 5, 1), session.Date);
    }

    [Fact]
    public void It_stands_in_the_form_again_as_typed_with_what_it_leaves_open()
    {
        var entry = DayEntry.Past("day", "Date", Today, LooseDay.Read("spring 2024"));
        Assert.Equal("spring 2024", entry.Initial);
        Assert.Equal("= between 1 March 2024 and 31 May 2024", entry.Echo!(Filled(("day", "spring 2024"))));
        Assert.Null(entry.Check!(Filled(("day", "spring 2024"))));
        Assert.Contains("still to come", entry.Check!(Filled(("day", "autumn 2026"))), StringComparison.Ordinal);
    }

    // The axle was swapped on 1 May 2024.
    [Fact]
    public void A_command_keeps_a_session_of_the_part_that_was_there_whatever_day_it_was_and_its_paper_is_found_by_the_same_words()
    {
        foreach (var (name, day) in new (string, DateOnly)[] { ("Harrow", new(2023, 1, 1)), ("Delmere", new(2024, 5, 1)) })
            small.Shop.Fit(small.Shop.Add(new AxleComponent { Name = name }), small.Bittern, Position.RearAxle, day, "", "");

        Said Kept(string day) => Said.By("axle", "--turns", "10:20.5", "--wheels", "one-held", "--record", "Bittern", "--date", day, "--database", Database);
        var refused = Kept("spring 2024");
        Assert.Equal(2, refused.ExitCode);
        Assert.Equal("--date: Bittern had more than one axle in 'spring 2024': Harrow, Delmere. Say the day more closely.", refused.Errors.Trim());
        Assert.Empty(small.Shop.Sessions(small.Bittern));

        Assert.Contains("Harrow", Kept("maart 2024").Output, StringComparison.Ordinal);
        Assert.Contains("Delmere", Kept("summer 2024").Output, StringComparison.Ordinal);
        Assert.Equal(["summer 2024", "maart 2024"], small.Shop.Sessions(small.Bittern).Select(session => session.Day.Text));

        Said Paper(string day) => Said.By("paper", "session", "Bittern", "--date", day, "--out", Path.Combine(small.Folder, "paper.pdf"), "--overwrite", "--database", Database);
        Assert.Equal(0, Paper("zomer 2024").ExitCode);
        var missed = Paper("2024-06-01");
        Assert.Equal(2, missed.ExitCode);
        Assert.Contains("sessions are of summer 2024, maart 2024", missed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_road_test_that_may_have_been_before_a_swap_says_nothing_of_the_axle()
    {
        foreach (var (name, day) in new (string, DateOnly)[] { ("Harrow", new(2023, 1, 1)), ("Delmere", new(2024, 5, 1)) })
            small.Shop.Fit(small.Shop.Add(new AxleComponent { Name = name }), small.Bittern, Position.RearAxle, day, "", "");

        var form = RoadTestForm.For(small.Bittern, day => small.Shop.DrivelineWhen(small.Bittern, day)?.Driveline, Today, _ => { });
        IReadOnlyList<string> Echo(string day) => form.Echo!(Filled(("speed", "80 km/h"), ("engine", "2450 rpm"), ("gear", ""), ("day", day)));
        Assert.StartsWith("That day leaves open whether it was before or after a swap", Assert.Single(Echo("spring 2024")), StringComparison.Ordinal);
        Assert.StartsWith("The gear's ratio is not known", Assert.Single(Echo("June 2024")), StringComparison.Ordinal);
    }

    [Fact]
    public void In_Dutch_they_are_typed_and_told_in_Dutch()
    {
        using var dutch = Language.Dutch.Speak();
        var entry = DayEntry.Past("day", "Datum", Today);
        Assert.Equal("= tussen 1 maart 2024 en 31 mei 2024", entry.Echo!(Filled(("day", "voorjaar 2024"))));
        Assert.Contains("voorjaar 2024", entry.Hint, StringComparison.Ordinal);
        Assert.All(["vandaag", "gisteren", "3 mei", "voorjaar 2024", "spring 2024", "omstreeks 2019"], typed => Assert.Null(entry.Check!(Filled(("day", typed)))));
    }

    private string Database => Path.Combine(small.Folder, "shop.db");

    private static FormValues Filled(params (string Id, string Text)[] values) => new(values.ToDictionary(value => value.Id, value => value.Text));
}
