using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Languages;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using BuildLog.Tui.YardCards;

namespace BuildLog.Tui.Tests.Languages;

/// <summary>What an entry begins with can be read by it again, also where numbers have a comma and months are Dutch.</summary>
public sealed class EntriesInDutchTests : IDisposable
{
    private readonly IDisposable spoken = Language.Dutch.Speak();

    public void Dispose() => spoken.Dispose();

    [Fact]
    public void A_count_as_the_tally_writes_it_is_a_reading()
    {
        var tally = new AxleTally("Harrow banjo", Wheels.OneHeld) { Written = string.Concat(Enumerable.Repeat("o", 10)) };

        Assert.EndsWith(":0.25", tally.Reading(0.25), StringComparison.Ordinal);
        Assert.Equal("0.125", new FinishedTally(Wheels.Each, "", "0.25").Align);
    }

    [Fact]
    public void The_chosen_columns_of_the_speeds_come_back_as_they_were_typed()
    {
        var car = new Driveline
        {
            Transmission = new("bak", [new("1", new(2, Source.Measured)), new("2", new(1, Source.Measured))]),
            RearAxle = new("as", new(4, Source.Measured)),
            Tyres = new("banden", new(2, Source.Measured), null),
        };
        var (view, wish) = (new AnsweringView(WorkbenchModel.EmptyShop), new SpeedsWish());
        view.Type(("engine", "1500 2250.5")).Fill(SpeedsForm.For(car, wish, UnitSystem.Metric));

        Assert.Equal("1500 2250.5", SpeedsForm.For(car, wish, UnitSystem.Metric).Entries.Single(entry => entry.Id == "engine").Initial);
        Assert.Equal(["verhouding", "1500", "2250,5", "zakt naar"], SpeedsWords.Of(car, Gearing.Goals.OwnersGoals.None, UnitSystem.Metric, wish).Columns);
    }

    [Theory]
    [InlineData("vandaag", 20)]
    [InlineData("today", 20)]
    [InlineData("gisteren", 19)]
    [InlineData("3 mei", 3)]
    [InlineData("3 May 2026", 3)]
    public void Days_are_read_in_both_languages(string typed, int day)
        => Assert.Equal(new(2026, 5, day), DayText.Read(typed, new(2026, 5, 20)).OrRefuse());

    [Fact]
    public void A_day_is_shown_in_Dutch_and_read_again()
    {
        Assert.Equal("3 mei 2026", DayText.InWords(new DateOnly(2026, 5, 3)));
        Assert.All(Enumerable.Range(1, 12).Select(month => new DateOnly(2025, month, 28)), day =>
        {
            Assert.Equal(day, DayText.Read(DayText.InWords(day), new(2026, 5, 20)).OrRefuse());
            Assert.Equal(day, DayText.Read(DayText.InShort(day), new(2026, 5, 20)).OrRefuse());
        });
        Assert.Contains("31 februari: februari heeft 29 dagen", DayText.Read("31 februari", new(2026, 5, 20)).Refusal!.Sentence.Replace("'", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Zeros_that_say_nothing_are_left_out_behind_a_comma_too()
        => Assert.Equal("= 4,5 in", OtherUnits.InWords(QuantityText.Read("114.3 mm", Kind.Length).OrRefuse()));

    // Written down in English once, or by a Dutch hand.
    [Theory]
    [InlineData("bolt circle")]
    [InlineData("steekcirkel")]
    public void What_a_part_must_have_stands_at_its_line_of_the_card(string what)
    {
        var lines = CardBlanks.With([new(new Later("bolt circle"), "mm")], [new(what, "5 × 114.3")]);

        Assert.Equal("steekcirkel", Assert.Single(lines).What.ToString());
    }

    [Fact]
    public void What_was_removed_is_named_without_the_word_for_it()
    {
        using var small = new SmallShop();
        var acts = new WorkbenchActs(small.Shop, small.Clock, UnitSystem.Metric);
        var spare = small.Shop.Add(new Data.Components.AxleComponent { Name = "reserveas" });
        acts.Remove(new AnsweringView(acts.Open()).Pick(FormattableString.Invariant($"part {spare.Id}")).Agree(true));

        Assert.Equal("axle reserveas", Assert.Single(small.Shop.Removals()).TakenOut);
    }
}
