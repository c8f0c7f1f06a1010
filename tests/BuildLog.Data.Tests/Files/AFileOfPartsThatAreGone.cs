using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>PartsThatAreGone.sql is the demo shop as the eighth schema held it: nobody could say what a vehicle is.</summary>
public sealed class AFileOfPartsThatAreGone : IDisposable
{
    private readonly EarlierShop earlier = new("PartsThatAreGone.sql");

    public void Dispose() => earlier.Dispose();

    // The last change in the dump.
    [Fact]
    public void Takes_back_what_was_done_before_it_was_brought_up_to_date()
    {
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", earlier.Shop.Undo());
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", earlier.Shop.Redo());
        earlier.AssertSoundButForItsFiles();
    }

    [Fact]
    public void Says_of_a_vehicle_what_it_is_once_somebody_told()
    {
        var vehicle = earlier.Shop.Vehicles().Single(one => one.Name == "Brindle");
        Assert.Equal("", vehicle.Description);

        earlier.Shop.Change(vehicle, told => told.Description = "half-ton pick-up of 1971");

        Assert.Equal("half-ton pick-up of 1971", earlier.Shop.Vehicles().Single(one => one.Name == "Brindle").Description);
        earlier.AssertSoundButForItsFiles();
    }

    // Counted in the dump.
    [Fact]
    public void Loses_no_row_and_keeps_its_rules()
    {
        earlier.AssertIsOfToday(
            ("Vehicles", 6), ("Components", 35), ("Fitments", 36), ("Sessions", 11), ("Readings", 26), ("Specs", 20), ("Attachments", 3), ("OutsideWorks", 1), ("ChangeSets", 125), ("Changes", 279), ("Findables", 125));
        earlier.AssertSoundButForItsFiles();
    }
}
