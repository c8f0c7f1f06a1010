using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Files;
using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Languages;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Languages.Tests;

/// <summary>A record that is kept by somebody who speaks Dutch is the same as anybody else's, and what programs know a refusal by does not change.</summary>
public sealed class WhatIsStoredTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
    private readonly IDisposable spoken = Language.Dutch.Speak();
    private readonly Shop shop;

    public WhatIsStoredTests() => shop = ShopFile.Open(Path.Combine(folder, "shop.db"));

    public void Dispose()
    {
        shop.Dispose();
        spoken.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void A_refusal_is_known_by_a_code_in_English_and_says_its_sentence_in_Dutch()
    {
        var refused = Assert.Throws<RefusedException>(() => shop.Add(new Note(shop.Add(new Vehicle { Name = "Tern" })) { Title = new string('x', 300) })).Refusal;
        Assert.Equal("title-of-the-note", refused.Code);
        Assert.Contains("tekens", refused.Sentence, StringComparison.Ordinal);

        Assert.Equal("body-class", Assert.Throws<RefusedException>(() => shop.Add(new Vehicle { Name = "Bittern", BodyClass = "airship" })).Refusal.Code);
    }

    [Fact]
    public void A_part_counted_in_the_yard_is_known_again_in_the_other_language()
    {
        var wanted = shop.Add(new WantedPart(shop.Add(new Vehicle { Name = "Bittern" }), WantedKind.Axle) { Title = "langere as", MustHaves = [new("steekcirkel", "5 × 114.3")] });
        shop.BringBack(new(wanted, new AxleComponent(), [part => new TeethSession((AxleComponent)part, null) { Date = new(2026, 5, 3), Readings = ["41/10", "41/10"] }]));
        var part = Assert.Single(shop.Parts()).Component;
        using var english = Language.English.Speak();

        Assert.True(YardPart.IsOf(wanted, part));
        Assert.Equal("Not bought: counted for langere as.", part.Notes);
    }

    [Fact]
    public void What_goes_along_is_counted_in_Dutch_words()
    {
        var vehicle = shop.Add(new Vehicle { Name = "Bittern" });
        foreach (var title in new[] { "een", "twee" }) shop.Add(new Job(vehicle) { Title = title });

        Assert.Equal("2 × klus", shop.WhatGoesWith(vehicle));
    }

    [Theory]
    [InlineData("3 mei 2026")]
    [InlineData("3 May 2026")]
    [InlineData("mei 2026")]
    public void A_day_is_read_whoever_named_its_month(string text)
    {
        Assert.Equal(2026, LooseDayText.Read(text).OrRefuse().Earliest!.Value.Year);
        using var english = Language.English.Speak();
        Assert.Equal(5, LooseDayText.Read(text).OrRefuse().Earliest!.Value.Month);
    }

    [Fact]
    public void Money_has_a_comma_and_is_read_back_and_lists_keep_the_point()
    {
        var paid = MoneyText.Read("1250.50 EUR", Currency.Find("EUR")!).OrRefuse();

        Assert.Equal("1250,50 EUR", paid.ToString());
        Assert.Equal(paid, MoneyText.Read(paid.ToString(), Currency.Find("EUR")!).OrRefuse());
        Assert.Equal("1250.50 EUR", paid.Listed);
    }
}
