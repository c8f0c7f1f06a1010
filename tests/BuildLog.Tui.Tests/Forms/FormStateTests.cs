using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Tests.Forms;

public sealed class FormStateTests
{
    [Fact]
    public void A_wrong_entry_gets_its_message_and_is_named_as_the_first_to_go_to()
    {
        var state = new FormState(VehicleForm.With());
        state.Set("roll", "30 inn");

        var (saved, firstWrong) = state.TrySave();

        Assert.False(saved);
        Assert.Equal("name", firstWrong);
        Assert.Equal("! Give it a name.", state.MessageOf("name"));
        Assert.Equal("! “30 inn” is not a length; type it like 2040 mm.", state.MessageOf("roll"));
    }

    [Fact]
    public void Typing_takes_the_message_of_that_entry_away_and_leaves_the_others()
    {
        var state = new FormState(VehicleForm.With());
        state.Set("roll", "30 inn");
        state.TrySave();

        state.Set("name", "Heron");

        Assert.Null(state.MessageOf("name"));
        Assert.NotNull(state.MessageOf("roll"));
    }

    [Fact]
    public void What_it_comes_to_waits_for_the_entry_that_is_wrong()
    {
        var state = new FormState(VehicleForm.With());
        state.Set("name", "Heron");
        state.Set("roll", "30 inn");
        Assert.Equal(["Will be called Heron."], state.Echo);

        Assert.True(state.CheckWhenLeft(VehicleForm.With().Entries.Single(entry => entry.Id == "roll")));
        Assert.Equal(["What it comes to is said once “Roll” is right."], state.Echo);

        state.Set("roll", "2040 mm");
        Assert.Equal(["Will be called Heron."], state.Echo);
    }

    // One vehicle's cruise goal is no beginning of another's.
    [Fact]
    public void What_is_half_filled_is_kept_under_what_it_is_about()
    {
        var pad = new Scratchpad();
        new FormState(VehicleForm.With() with { KeptAs = "Cruise goal (Heron)" }, pad).Set("name", "Heron");

        Assert.Equal(["Cruise goal (Heron)"], pad.Left);
        Assert.Null(pad.Draft("Cruise goal (Drover)"));
    }

    [Fact]
    public void Why_it_could_not_be_saved_is_told_apart_from_what_was_typed_wrongly()
    {
        var state = new FormState(VehicleForm.With(_ => SaveOutcome.NotNow("The disk is full.")));
        state.TrySave();
        Assert.Null(state.RefusedAtSaving);

        state.Set("name", "Heron");
        state.TrySave();
        Assert.Equal("The disk is full.", state.RefusedAtSaving);
    }

    [Fact]
    public void Entries_with_the_same_id_in_other_forms_have_words_of_their_own()
    {
        var pad = new Scratchpad();
        Form Asking(string forWhat) => VehicleForm.With() with { Entries = [new TextEntry("what", "What") { IsRemembered = true, RememberedAs = forWhat }] };
        var cost = new FormState(Asking("cost"), pad);
        cost.Set("what", "gasket set");
        Assert.True(cost.TrySave().Saved);

        var (again, other) = (new FormState(Asking("cost"), pad), new FormState(Asking("decision"), pad));
        again.Set("what", "gas");
        other.Set("what", "gas");
        Assert.Equal("gasket set", again.SuggestionFor(again.Shown[0]));
        Assert.Null(other.SuggestionFor(other.Shown[0]));
    }

    [Fact]
    public void A_hidden_entry_is_neither_checked_nor_saved()
    {
        FormValues? savedValues = null;
        var state = new FormState(VehicleForm.With(values =>
        {
            savedValues = values;
            return SaveOutcome.Done;
        }));
        state.Set("name", "Heron");
        state.Set("drive", "all");
        state.Set("transfer", "1.22");
        state.Set("drive", "rear");

        var (saved, _) = state.TrySave();

        Assert.True(saved);
        Assert.Equal("", savedValues!["transfer"]);
        Assert.Equal("1.22", state.Text("transfer")); // still there if the choice goes back
    }

    [Fact]
    public void A_shown_entry_is_checked()
    {
        var state = new FormState(VehicleForm.With());
        state.Set("name", "Heron");
        state.Set("drive", "all");

        Assert.Equal((false, "transfer"), state.TrySave());
    }

    [Fact]
    public void A_choice_without_a_default_has_to_be_made()
    {
        var form = new Form
        {
            Title = "Count turns",
            Entries = [new ChoiceEntry("wheels", "Wheels", [new("one", "one held"), new("both", "both together")])],
            Save = _ => SaveOutcome.Done,
        };
        var state = new FormState(form);

        Assert.Equal((false, "wheels"), state.TrySave());
        Assert.Equal("! Choose one.", state.MessageOf("wheels"));
    }

    [Fact]
    public void When_saving_is_refused_for_an_entry_its_message_stands_there_and_nothing_typed_is_lost()
    {
        var state = new FormState(VehicleForm.With(_ => SaveOutcome.Refuse("name", "There is a Heron already.")));
        state.Set("name", "Heron");
        state.Set("notes", "blue\nrusty");

        Assert.Equal((false, "name"), state.TrySave());
        Assert.Equal("! There is a Heron already.", state.MessageOf("name"));
        Assert.Equal("blue\nrusty", state.Text("notes"));
    }

    [Theory]
    [InlineData("roll", "roll")]
    [InlineData("vehicle", "name")]
    [InlineData("transfer", null)] // that entry does not show
    [InlineData("disk", null)]
    public void What_the_record_refuses_stands_beside_the_entry_that_answers_for_it(string code, string? entry)
    {
        var form = VehicleForm.With(_ => Checks.Try(() => throw new RefusedException(code, "It cannot be.", "")));
        var state = new FormState(form with { Entries = [form.Entries[0] with { AnswersFor = ["vehicle"] }, .. form.Entries.Skip(1)] });
        state.Set("name", "Heron");

        Assert.Equal((false, entry), state.TrySave());
        Assert.Equal("It cannot be.", entry is null ? state.FormMessage : state.MessageOf(entry)![2..]);
    }

    [Fact]
    public void What_the_record_could_not_take_is_kept_when_the_form_is_left_and_goes_when_it_was_saved()
    {
        var (pad, isLocked) = (new Scratchpad(), true);
        var form = VehicleForm.With(_ => Checks.Try(() =>
        {
            if (isLocked) throw new RecordException(Fault.Busy, "Another program is writing.");
        }));
        var state = new FormState(form, pad);
        state.Set("name", "Heron");

        Assert.Equal((false, null), state.TrySave());
        Assert.StartsWith("The record could not take what you typed. It is kept, and offered", state.BeforeLeaving!.Text, StringComparison.Ordinal);
        state.Leave();
        Assert.Equal("Heron", pad.Draft(form.Title)!["name"]);

        isLocked = false;
        Assert.Equal((true, null), new FormState(form, pad, pad.Draft(form.Title)).TrySave());
        Assert.Empty(pad.Left);
    }

    [Fact]
    public void What_a_rule_of_the_record_refuses_is_thrown_away_when_the_form_is_left()
    {
        var pad = new Scratchpad();
        var state = new FormState(VehicleForm.With(_ => Checks.Try(() => throw new RecordException(Fault.Refused, "No."))), pad);
        state.Set("name", "Heron");
        state.TrySave();

        Assert.Equal("What you typed here has not been saved.", state.BeforeLeaving!.Text);
        state.Leave();
        Assert.Empty(pad.Left);
    }

    [Fact]
    public void When_saving_is_refused_for_a_hidden_entry_the_form_says_it()
    {
        var state = new FormState(VehicleForm.With(_ => SaveOutcome.Refuse("transfer", "The record does not know this case.")));
        state.Set("name", "Heron");

        Assert.Equal((false, null), state.TrySave());
        Assert.Equal("The record does not know this case.", state.FormMessage);
    }

    [Fact]
    public void Under_an_entry_stands_the_hint_until_what_is_typed_means_something()
    {
        var state = new FormState(VehicleForm.With());
        var roll = state.Shown.Single(entry => entry.Id == "roll");
        Assert.Equal("one turn of the wheel, such as 2040 mm", state.NoteOf(roll));

        state.Set("roll", "2040 mm");
        Assert.Equal("= 2.04 m = 80.3 in", state.NoteOf(roll));
    }

    [Fact]
    public void Typing_and_taking_it_back_is_no_change()
    {
        var state = new FormState(VehicleForm.With());
        state.Set("name", "Heron");
        Assert.True(state.IsChanged);

        state.Set("name", "");
        Assert.False(state.IsChanged);
    }

    [Fact]
    public void Readings_are_the_lines_that_carry_something()
    {
        var values = new FormValues(new Dictionary<string, string> { ["readings"] = " 10:20 1/2 \n\n20:41\n" });

        Assert.Equal(["10:20 1/2", "20:41"], values.Lines("readings"));
        Assert.Equal(" 10:20 1/2 \n\n20:41\n", values.AsTyped("readings"));
    }

    [Fact]
    public void A_choice_that_has_an_open_answer_may_be_left_at_it()
    {
        var state = new FormState(new()
        {
            Title = "Joint",
            HelpPage = "Parts",
            Entries = [new ChoiceEntry("side", "Starter side", [new("", "not looked at"), new("left", "left")]), new ChoiceEntry("wheels", "Wheels", [new("one", "one held"), new("both", "together")])],
            Save = _ => SaveOutcome.Done,
        });

        var (saved, firstWrong) = state.TrySave();

        Assert.False(saved);
        Assert.Equal("wheels", firstWrong);
        Assert.Null(state.MessageOf("side"));
    }
}
