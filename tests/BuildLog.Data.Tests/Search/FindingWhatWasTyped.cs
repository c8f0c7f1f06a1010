using System.Globalization;
using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Goals;
using BuildLog.Data.Jobs;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Languages;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests.Search;

public sealed class FindingWhatWasTyped : IDisposable
{
    private readonly TestShop test = new();
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;

    public FindingWhatWasTyped()
    {
        var vehicle = test.Shop.Add(new Vehicle { Name = "Brindle", ChassisNumber = "WX-PU-20417", Notes = "Wants to cross the county.", Mass = Noted.Of(Spec.Mass, "1450 kg", Source.Measured) });
        var axle = test.Shop.Add(new AxleComponent { Name = "Harrow yard axle", SerialNumber = "HR-7-4410", Donor = "O'Brien's yard", Notes = "Tag newer than the housing; 35\" tyres on it." });
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 5, 3), "84 210", "the old one whined");
        test.Shop.Add(new TurnCountSession(axle, vehicle) { Date = new(2026, 5, 4), Wheels = Wheels.OneHeld, Helper = "Ärmel", Readings = ["10:20.5"] });
        test.Shop.Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2400 rpm" });
    }

    public void Dispose()
    {
        CultureInfo.CurrentCulture = culture;
        test.Dispose();
    }

    // Reckoned on 1 March: nobody typed that.
    [Fact]
    public void Shows_a_day_as_it_was_typed_and_finds_it_by_that()
    {
        var brindle = test.Shop.FindVehicle("Brindle");
        test.Shop.Add(new Cost(brindle) { What = "linings", Day = LooseDay.Read("spring 2024")!, Amount = Money.Of(1990, Currency.Euro) });

        var found = Assert.Single(test.Shop.Find("spring 2024"));
        Assert.Equal(("cost", "spring 2024", new DateOnly(2024, 3, 1)), (found.Kind, found.DayAsTyped, found.Day));
        Assert.Null(Assert.Single(test.Shop.Find("10:20.5")).DayAsTyped);
    }

    [Theory]
    [InlineData("20417", "vehicle")]
    [InlineData("county", "vehicle")]
    [InlineData("1450", "vehicle")]
    [InlineData("HR-7", "axle")]
    [InlineData("whin", "fitment")]
    [InlineData("84 210", "fitment")]
    [InlineData("10:20.5", "turn count")]
    [InlineData("armel", "turn count")]
    [InlineData("ÄRMEL", "turn count")]
    [InlineData("2400 rp", "cruise goal")]
    [InlineData("brindle whined", "fitment")]
    [InlineData("yard housing", "axle")]
    public void Reaches_everything_typed(string typed, string kind) => Assert.Equal(kind, Assert.Single(test.Shop.Find(typed)).Kind);

    [Theory]
    [InlineData("35\"", 1)]
    [InlineData("O'Brien", 1)]
    [InlineData("(", 0)]
    [InlineData("AND", 0)]
    [InlineData("county AND", 0)]
    [InlineData("NEAR(", 0)]
    [InlineData("Title:county", 0)]
    [InlineData("county*", 1)]
    [InlineData("( county )", 1)]
    [InlineData("\"county", 1)]
    [InlineData("-- ; DROP TABLE Findables", 0)]
    [InlineData("", 0)]
    [InlineData("   ", 0)]
    [InlineData("\0county\u001b[31m", 0)]
    [InlineData("\ud83d", 0)]
    public void Takes_any_text_for_words(string typed, int found) => Assert.Equal(found, test.Shop.Find(typed).Count);

    [Fact]
    public void Begins_the_last_word_only_and_a_blank_ends_it()
    {
        Assert.Single(test.Shop.Find("coun"));
        Assert.Empty(test.Shop.Find("coun "));
        Assert.Empty(test.Shop.Find("cros county"));
        Assert.Single(test.Shop.Find("cross coun"));
    }

    [Fact]
    public void Puts_what_is_called_so_before_what_mentions_it()
    {
        test.Shop.Add(new AxleComponent { Name = "spare", Notes = "like the Harrow, with a Harrow tag; Harrow" });
        Assert.Equal("Harrow yard axle", test.Shop.Find("harrow")[0].Title);
        Assert.Equal("harrow", Assert.Single(test.Shop.Find("harrow", limit: 1)).Title[..6], ignoreCase: true);
    }

    [Fact]
    public void Says_of_an_attachment_which_vehicle_and_part_it_is_about()
    {
        var vehicle = test.Shop.FindVehicle("Brindle");
        var job = test.Shop.Add(new Job(vehicle) { Title = "brake lines" });
        var axle = test.Shop.Parts().Select(place => place.Component).OfType<AxleComponent>().Single();
        foreach (var (about, name) in new (Kept, string)[] { (vehicle, "side.jpg"), (job, "lines.jpg"), (axle, "pinion.jpg") })
            test.Shop.Add(new Attachment(about) { FileName = name, MediaType = "image/jpeg", Sha256 = new('a', 64), Length = 3 });

        Assert.Equal("Brindle", Assert.Single(test.Shop.Find("side.jpg")).Vehicle);
        Assert.Equal("Brindle", Assert.Single(test.Shop.Find("lines.jpg")).Vehicle);
        Assert.Equal("Harrow yard axle", Assert.Single(test.Shop.Find("pinion.jpg")).Part);
    }

    [Fact]
    public void Puts_a_vehicle_before_the_photo_that_is_called_like_it()
    {
        test.Shop.Add(new Attachment(test.Shop.FindVehicle("Brindle")) { FileName = "brindle.jpg", MediaType = "image/jpeg", Sha256 = new('a', 64), Length = 3 });
        var found = test.Shop.Find("brindle");
        Assert.Equal("Brindle", found[0].Title);
        Assert.Equal("brindle.jpg", found[1].Title);
    }

    [Fact]
    public void Follows_every_change_undo_and_deletion()
    {
        var vehicle = test.Shop.FindVehicle("Brindle");
        vehicle = test.Shop.Change(vehicle, v => (v.Name, v.Notes) = ("Bramble", "Quiet now."));
        Assert.Empty(test.Shop.Find("county"));
        Assert.Equal("Bramble", Assert.Single(test.Shop.Find("quiet")).Title);
        Assert.Equal("Bramble", Assert.Single(test.Shop.Find("bramble whined")).Vehicle);
        Assert.Empty(test.Shop.Find("brindle"));
        test.Shop.Undo();
        Assert.Single(test.Shop.Find("county"));
        Assert.Single(test.Shop.Find("brindle whined"));
        Assert.Empty(test.Shop.Find("quiet"));

        test.Shop.Remove(test.Shop.FindVehicle("Brindle"), withEverything: true);
        Assert.Empty(test.Shop.Find("whined"));
        test.Reopen();
        test.Shop.Undo();
        Assert.Single(test.Shop.Find("brindle whined"));
        Assert.Equal("ok", test.Ask("PRAGMA integrity_check"));
        test.Ask("INSERT INTO FindableText (FindableText) VALUES ('integrity-check')");
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void Is_the_same_on_a_machine_in_another_language(string name)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
        test.Shop.Add(new Vehicle { Name = "Pini", Notes = "INLINE pump, 1.5 mm" });
        Assert.Equal("Pini", Assert.Single(test.Shop.Find("inline")).Title);
        Assert.Equal("Pini", Assert.Single(test.Shop.Find("PINI")).Title);
        Assert.Equal("turn count", Assert.Single(test.Shop.Find("4 May 2026")).Kind);
    }

    [Fact]
    public void Sees_what_another_program_entered()
    {
        using var other = test.Open();
        other.Add(new Vehicle { Name = "Tansy", Notes = "lugging" });
        Assert.Equal("Tansy", Assert.Single(test.Shop.Find("lugg")).Title);
    }

    [Theory]
    [InlineData("whined", "the old one whined")]
    [InlineData("84 210", "84 210 the old one whined")]
    public void Leaves_out_a_number_that_stands_alone_unless_it_is_looked_for(string typed, string excerpt)
        => Assert.Equal(excerpt.Split(' ').Order(), Assert.Single(test.Shop.Find(typed)).Excerpt.Split(' ').Order());

    [Fact]
    public void Is_named_in_the_language_spoken()
    {
        using var spoken = Language.Dutch.Speak();
        Assert.Equal("als as vanaf 3 mei 2026", Assert.Single(test.Shop.Find("whined")).Title);
        Assert.Equal("van 4 mei 2026", Assert.Single(test.Shop.Find("10:20.5")).Title);
    }

    [Fact]
    public void Shows_the_words_around_the_match_on_one_line()
    {
        test.Shop.Add(new Vehicle { Name = "Tansy", Notes = string.Join('\n', Enumerable.Repeat("nothing here", 30)) + "\ncracked flange\n" + string.Join(' ', Enumerable.Repeat("more", 30)) });
        var excerpt = Assert.Single(test.Shop.Find("flange")).Excerpt;
        Assert.Contains("cracked flange", excerpt, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', excerpt);
        Assert.True(excerpt.Length < 120);
    }
}
