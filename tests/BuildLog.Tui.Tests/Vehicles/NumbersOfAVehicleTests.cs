using BuildLog.Data;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Vehicles;

namespace BuildLog.Tui.Tests.Vehicles;

/// <summary>How the form says that a vehicle's own numbers are known.</summary>
public sealed class NumbersOfAVehicleTests
{
    private readonly Vehicle vehicle = new();

    [Fact]
    public void What_is_typed_is_the_owners_word_until_somebody_says_otherwise()
    {
        Apply(null, ("Mass", "1450 kg"), ("DrivenShare", "52 %"), ("Altitude", "300 m"));

        Assert.Equal((Source.OwnersWord, Source.OwnersWord), (vehicle.Mass!.Source, vehicle.DrivenShare!.Source));

        Apply(Source.MakersData);
        Assert.Equal((Source.MakersData, Source.OwnersWord), (vehicle.Mass!.Source, vehicle.Altitude!.Source));
    }

    [Fact]
    public void A_mass_that_was_weighed_stays_so()
    {
        vehicle.Mass = Noted.Of(Spec.Mass, "1450 kg", Source.Measured);

        Apply(null, ("DrivenShare", "52 %"));

        Assert.Equal(Source.Measured, vehicle.Mass.Source);
    }

    private void Apply(Source? source, params (string Entry, string Text)[] typed)
    {
        var texts = LoadEntries.Entries(vehicle).ToDictionary(entry => entry.Id, entry => entry.Initial, StringComparer.Ordinal);
        foreach (var (entry, text) in typed) texts[entry] = text;
        if (source is { } known) texts["source"] = known.ToString();
        LoadEntries.Apply(new FormValues(texts), vehicle);
    }
}
