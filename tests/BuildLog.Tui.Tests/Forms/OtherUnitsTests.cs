using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Tests.Forms;

public sealed class OtherUnitsTests
{
    // 1 in = 25.4 mm, 1 mi = 1.609344 km, 1 lb = 0.45359237 kg, by definition.
    [Theory]
    [InlineData("114.3 mm", Kind.Length, "= 4.5 in")]
    [InlineData("4 1/2 in", Kind.Length, "= 114.3 mm")]
    [InlineData("2,54 m", Kind.Length, "= 8.333 ft")]
    [InlineData("70 mph", Kind.Speed, "= 112.7 km/h")]
    [InlineData("1450 kg", Kind.Mass, "= 3197 lb")]
    [InlineData("27 in ± 0.2 in", Kind.Length, "= 686 ± 6 mm")]
    [InlineData("3 deg", Kind.Angle, null)]
    [InlineData("1450", Kind.Mass, "= 1450 kg = 3197 lb")]
    [InlineData("1450 ± 10", Kind.Mass, "= 1450 ± 10 kg = 3200 ± 30 lb")]
    [InlineData("2600", Kind.Rotation, "= 2600 rev/min")]
    [InlineData("4,10", Kind.Number, null)]
    public void A_quantity_is_echoed_in_the_other_system(string typed, Kind kind, string? echo)
        => Assert.Equal(echo, OtherUnits.InWords(QuantityText.Read(typed, kind).OrRefuse()));
}
