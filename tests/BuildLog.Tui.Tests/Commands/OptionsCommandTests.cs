using System.Globalization;
using System.Text.Json;
using BuildLog.DemoData;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Tests.Commands;

public sealed class OptionsCommandTests
{
    [Fact]
    public void The_fields_are_the_ones_other_programs_ask_for()
    {
        var json = Said.By("options", "Brindle", "--demo", "--json", "--top", "3").Json;

        Assert.True(json.GetProperty("tried").GetInt64() > 1000);
        Assert.True(json.GetProperty("elapsedMs").GetDouble() >= 0);
        Assert.Equal(3, json.GetProperty("options").GetArrayLength());
        var first = json.GetProperty("options")[0];
        foreach (var number in (string[])["axleRatio", "changes", "cruiseRpm", "clash", "watch", "open"]) Assert.Equal(JsonValueKind.Number, first.GetProperty(number).ValueKind);
        foreach (var text in (string[])["transmission", "tyre"]) Assert.Equal(JsonValueKind.String, first.GetProperty(text).ValueKind);
        foreach (var field in (string[])["overdrive", "costMinor", "currency", "parts"]) Assert.True(first.TryGetProperty(field, out _), field);
    }

    // The axle that came out of Brindle met the goal, as its history tells.
    [Fact]
    public void The_axle_that_was_taken_out_is_found_again()
    {
        var first = Said.By("options", "Brindle", "--demo", "--json", "--pool", "owned", "--change", "axle").Json.GetProperty("options")[0];

        Assert.Equal(1, first.GetProperty("changes").GetInt32());
        Assert.Equal(0, first.GetProperty("clash").GetInt32());
        Assert.Contains("the frame's own", first.GetProperty("parts")[0].GetString(), StringComparison.Ordinal);
    }

    // It came off chipped and whining, and the axle of another vehicle leaves that one standing: neither just costs nothing.
    [Theory]
    [InlineData("Brindle", "owned", "pinion chipped", "inspect first")]
    [InlineData("Pellow", "elsewhere", "(owned, on Quillon)", "from Quillon")]
    public void What_speaks_against_a_part_of_the_shop_stands_beside_it(string vehicle, string pool, string told, string cost)
    {
        var said = string.Join(' ', Said.By("options", vehicle, "--demo", "--pool", pool, "--change", "axle").Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

        Assert.Contains(told, said, StringComparison.Ordinal);
        Assert.Contains(cost, said, StringComparison.Ordinal);
    }

    // Tansy's speedometer reads low, and nothing else is wrong: its gear is the way out, though only gearboxes were to be searched; and where the axle is changed too it goes with it.
    [Fact]
    public void A_driven_gear_is_the_way_out_of_a_speedometer_that_reads_low()
    {
        var options = Said.By("options", "Tansy", "--demo", "--json", "--change", "axle").Json.GetProperty("options").EnumerateArray().ToList();

        Assert.Equal((21, 1, 0), (options[0].GetProperty("drivenGearTeeth").GetInt32(), options[0].GetProperty("changes").GetInt32(), options[0].GetProperty("clash").GetInt32()));
        Assert.Equal(JsonValueKind.Null, options[0].GetProperty("costMinor").ValueKind);
        Assert.Equal(["21-tooth speedometer gear"], options[0].GetProperty("parts").EnumerateArray().Select(part => part.GetString()));
        Assert.Contains(options, option => option.GetProperty("changes").GetInt32() == 2 && option.GetProperty("drivenGearTeeth").ValueKind == JsonValueKind.Number);
        Assert.DoesNotContain("Besides, this cures the clash of speedometer", Said.By("options", "Tansy", "--demo", "--change", "axle").Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    // Quillon is cured by three parts at once, and made less bad by one.
    [Fact]
    public void What_leaves_no_clash_stands_before_what_only_helps()
    {
        var said = Said.By("options", "Quillon", "--demo");
        var (cures, helps) = (said.Output.IndexOf("Leaves no clash:", StringComparison.Ordinal), said.Output.IndexOf("Helps, but still clashes:", StringComparison.Ordinal));
        Assert.InRange(cures, 0, helps);
        Assert.InRange(said.Output.IndexOf("3 parts changed:", StringComparison.Ordinal), cures, helps);

        var options = Said.By("options", "Quillon", "--demo", "--json").Json.GetProperty("options").EnumerateArray().Select(option => (StillClashes: option.GetProperty("stillClashes").GetBoolean(), Changes: option.GetProperty("changes").GetInt32())).ToList();
        Assert.Equal(options.Order(), options);
        Assert.Equal([false, true], options.Select(option => option.StillClashes).Distinct());
    }

    // It came off chipped: the sound axles of one part come first, and what it takes to mend it nobody knows.
    [Fact]
    public void What_came_off_for_a_fault_comes_after_what_uses_sound_parts()
    {
        var options = Said.By("options", "Brindle", "--demo", "--json").Json.GetProperty("options").EnumerateArray().Where(option => option is var one && !one.GetProperty("stillClashes").GetBoolean() && one.GetProperty("changes").GetInt32() == 1).ToList();
        var chipped = options.FindIndex(option => option.GetProperty("inspectFirst").GetArrayLength() > 0);

        Assert.Equal(options.Count - 1, chipped);
        Assert.Equal(JsonValueKind.Null, options[chipped].GetProperty("costMinor").ValueKind);
        Assert.Contains("(owned; inspect first: came off Brindle", options[chipped].GetProperty("parts")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_to_be_inspected_first_is_thrown_out_where_only_sound_parts_are_asked_for()
    {
        var sound = Said.By("options", "Brindle", "--demo", "--json", "--sound-only").Json;

        Assert.All(sound.GetProperty("options").EnumerateArray(), option => Assert.Equal(0, option.GetProperty("inspectFirst").GetArrayLength()));
        Assert.Contains(sound.GetProperty("thrownOut").EnumerateArray(), thrown => thrown.GetProperty("reason").GetString() == "axle to be inspected first");
    }

    // With its overdrive Ottery's propshaft is too fast whatever is changed behind it; without, a longer axle makes up for it.
    [Fact]
    public void A_clash_that_no_way_out_cures_is_named_with_what_would()
    {
        static string InOneLine(params string[] more) => string.Join(' ', Said.By(["options", "Ottery", "--demo", .. more]).Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

        Assert.Contains("None of these cures the clash of propshaft speed. What would: 1100 mm or less between joint centres", InOneLine("--change", "axle,tyres"), StringComparison.Ordinal);
        Assert.Contains("1 no overdrive + axle 3.07 gears (43/14) in the axle fitted (listed) 2561 ± 4 rev/min; 0 clash", InOneLine(), StringComparison.Ordinal);
        Assert.Contains("No part that was searched cures the clash of propshaft speed. What would: 1100 mm or less", InOneLine("--change", "transmission"), StringComparison.Ordinal);
    }

    // A program that takes the third of the fields takes what the third line says.
    [Fact]
    public void Options_are_numbered_in_the_order_they_are_shown_in()
    {
        var numbers = Said.By("options", "Brindle", "--demo").Output.Split('\n').Where(line => line.Length > 4 && char.IsAsciiDigit(line[2]) && line[0] == ' ' && line[3] == ' ').Select(line => int.Parse(line[..3], CultureInfo.InvariantCulture)).ToList();
        var places = Said.By("options", "Brindle", "--demo", "--json").Json.GetProperty("options").EnumerateArray().Select(option => option.GetProperty("place").GetInt32()).ToList();

        Assert.Equal(Enumerable.Range(1, numbers.Count), numbers);
        Assert.Equal(numbers, places);
    }

    [Fact]
    public void Text_fits_eighty_columns()
    {
        var lines = Said.By("options", "Pellow", "--demo").Output.Split('\n');

        Assert.Contains(lines, line => line.StartsWith("One part changed:", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.True(line.TrimEnd().Length <= 80, line));
    }

    // The advert of 280 EUR and the yard's 4.10 of 120 EUR; only the first meets the goal.
    [Fact]
    public void What_is_offered_is_searched_with_its_price()
    {
        var first = Said.By("options", "Brindle", "--demo", "--json", "--pool", "offered", "--change", "axle").Json.GetProperty("options")[0];

        Assert.Equal(28000, first.GetProperty("costMinor").GetInt64());
        Assert.Equal("EUR", first.GetProperty("currency").GetString());
        Assert.Contains("offered at 280.00 EUR", first.GetProperty("parts")[0].GetString(), StringComparison.Ordinal);
    }

    // The newest offer names pounds and lies outside the 3.23 to 3.49 that is hunted: 2 · 16 / 10 = 3.20.
    [Fact]
    public void An_offer_in_other_money_and_outside_the_hunt_takes_no_price_away_and_comes_last()
    {
        var path = DemoShop.CreateFreshCopy();
        try
        {
            // 3.198 and its ±, rounded up, end below the 3.23 of the hunt, and the cruise might still be met.
            Assert.Equal(0, Said.By("axle", "--turns", "10:15.99", "--wheels", "one-held", "--record", "Brindle", "--wanted", "longer axle", "--offer", "row 11", "--price", "300 GBP", "--database", path).ExitCode);

            var options = Said.By("options", "Brindle", "--database", path, "--json", "--pool", "offered", "--change", "axle").Json.GetProperty("options").EnumerateArray().ToList();

            Assert.Equal(28000, options[0].GetProperty("costMinor").GetInt64());
            Assert.False(options[0].GetProperty("outsideTheHunt").GetBoolean());
            Assert.All(options.Skip(1), option => Assert.True(option.GetProperty("outsideTheHunt").GetBoolean()));
            var said = string.Join(' ', Said.By("options", "Brindle", "--database", path, "--pool", "offered", "--change", "axle").Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains("row 11 (outside what you hunt)", said, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    // Nothing else is offered, so nothing is dearer: the price is told as it is.
    [Fact]
    public void A_price_in_other_money_is_told_as_it_is()
    {
        var option = new Option(
            Here<Transmission>(new("box", [])), Here<Overdrive>(null), new("long", new("long", null), Pool.Offered) { Price = new(30000, "GBP") }, Here<TyreSet>(new("set", null, null)), new(), new(0, 0, 0, double.PositiveInfinity, 1, 0))
        {
            Findings = [],
        };

        Assert.Equal("300.00 GBP, not compared with EUR", OptionWords.Cost(option, "EUR"));
        Assert.Equal("price not known", OptionWords.Cost(option with { Axle = option.Axle with { Price = null } }, "EUR"));

        static Candidate<T> Here<T>(T? part)
            where T : class
            => new("here", part, Pool.Owned) { IsInPlace = true };
    }

    [Fact]
    public void Windows_of_each_part_are_said()
    {
        var windows = Said.By("options", "Brindle", "--demo", "--json", "--top", "1").Json.GetProperty("windows").EnumerateArray().ToList();

        foreach (var part in (string[])["axle", "gearbox", "overdrive", "tyres"]) Assert.Contains(windows, window => window.GetProperty("part").GetString() == part);
        Assert.Contains("axle ratio 3.2", Said.By("options", "Brindle", "--demo", "--top", "1").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Listed_gearboxes_are_searched()
        => Assert.Contains("(listed)", Said.By("options", "Brindle", "--demo", "--pool", "listed", "--change", "transmission").Output, StringComparison.Ordinal);

    [Fact]
    public void An_empty_pool_is_a_sentence()
        => Assert.Contains(
            "There is nothing else to try on Tansy: nothing that is offered would go in as overdrive. Search more than that.", Said.By("options", "Tansy", "--demo", "--pool", "offered", "--change", "overdrive").Errors, StringComparison.Ordinal);

    // Nobody's vehicle is taken apart unless that is asked for.
    [Theory]
    [InlineData()]
    [InlineData("--pool", "owned")]
    public void Parts_on_other_vehicles_are_not_searched_unless_they_are_chosen(params string[] pool)
    {
        Assert.DoesNotContain("owned, on ", Said.By(["options", "Pellow", "--demo", .. pool]).Output, StringComparison.Ordinal);
        Assert.Contains("owned, on ", Said.By("options", "Pellow", "--demo", "--pool", "owned,elsewhere").Output, StringComparison.Ordinal);
    }

    // The axle that came off chipped, the advert that nobody has counted, and every number with its ±.
    [Fact]
    public void A_program_reads_what_is_doubtful_and_how_sure_each_number_is()
    {
        var json = Said.By("options", "Brindle", "--demo", "--json", "--change", "axle", "--map").Json;
        var options = json.GetProperty("options").EnumerateArray().ToList();

        Assert.Contains("pinion chipped", options.SelectMany(option => option.GetProperty("inspectFirst").EnumerateArray()).Single().GetString(), StringComparison.Ordinal);
        Assert.All(options, option => Assert.Equal(option.GetProperty("parts")[0].GetString()!.Contains("(offered", StringComparison.Ordinal), option.GetProperty("onlySellersWord").GetBoolean()));
        Assert.All(options, option => Assert.True(option.GetProperty("cruiseRpmExpanded95").GetDouble() > 0));
        Assert.All(options, option => Assert.True(option.GetProperty("axleRatioExpanded95").GetDouble() >= 0));

        var map = json.GetProperty("map");
        var (ratios, verdicts) = (map.GetProperty("ratios").GetArrayLength(), map.GetProperty("verdicts"));
        Assert.Equal(ratios, verdicts.GetArrayLength());
        Assert.All(verdicts.EnumerateArray(), row => Assert.Equal(map.GetProperty("circumferencesM").GetArrayLength(), row.GetArrayLength()));
    }

    [Fact]
    public void What_was_thrown_out_before_anything_was_tried_is_counted_too()
    {
        var json = Said.By("options", "Brindle", "--demo", "--json").Json;
        var thrown = json.GetProperty("thrownOut").EnumerateArray().Sum(entry => entry.GetProperty("combinations").GetInt64());

        Assert.True(thrown > 0);
        Assert.Equal(thrown, json.GetProperty("thrownOutBefore").GetInt64());
        Assert.Contains(FormattableString.Invariant($"Another {thrown:N0} needed no look: one of their parts cannot be used."), Said.By("options", "Brindle", "--demo").Output.ReplaceLineEndings(" ").Replace("     ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // The window of the tyres takes the tyres as exact; the map draws them with their ±.
    [Fact]
    public void The_map_says_what_it_takes_as_exact()
        => Assert.Contains("Each axle here is as sure as counted teeth, each tyre as sure as its label says", Said.By("options", "Brindle", "--demo", "--map", "--change", "axle").Output.ReplaceLineEndings(" "), StringComparison.Ordinal);

    [Theory]
    [InlineData("--pool", "shelf", "'shelf' is not one of owned, offered, listed, elsewhere.")]
    [InlineData("--change", "engine", "'engine' is not one of axle, tyres, transmission, gearbox, overdrive.")]
    [InlineData("--top", "0", "'0' options cannot be shown: a whole number, one or more.")]
    public void What_cannot_be_searched_is_a_sentence(string option, string typed, string sentence)
    {
        var said = Said.By("options", "Brindle", "--demo", option, typed);

        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
    }
}
