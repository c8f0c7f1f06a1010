using BuildLog.Gearing.Languages;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

public sealed class AsWrittenTests
{
    [Theory]
    [InlineData("2.5 bar", "bar", "2,5 bar")]
    [InlineData("2,5 bar", "bar", "2,5 bar")]
    [InlineData("870", "mm", "870 mm")]
    [InlineData("0.1", "km", "0,1 km")]
    [InlineData("7 1/4", "in", "7 1/4 in")]
    [InlineData("6' 2 1/2\"", "mm", "6' 2 1/2\"")]
    [InlineData("870 ± 5", "mm", "870 ± 5 mm")]
    [InlineData("870 ± 0.5 mm", "mm", "870 ± 0,5 mm")]
    [InlineData("870 ± 1%", "mm", "870 mm ± 1%")]
    [InlineData("12.5", "%", "12,5 %")]
    [InlineData("3.5", "°", "3,5°")]
    [InlineData("4.10", "", "4,10")]
    [InlineData("84 210", "km", "84 210 km")]
    [InlineData("1,234.5 mm", "mm", "1234,5 mm")]
    [InlineData("1.234.567 mm", "mm", "1234567 mm")]
    public void A_typed_number_is_written_in_the_language_and_has_a_unit(string typed, string granted, string said)
    {
        using var spoken = Language.Dutch.Speak();
        Assert.Equal(said, AsWritten.InWords(typed, Units.Spelt(granted)!));
    }

    [Theory]
    [InlineData("31x10.50R15LT")]
    [InlineData("6.00-16")]
    [InlineData("7.50R16")]
    public void A_number_in_a_name_stays(string name)
    {
        using var spoken = Language.Dutch.Speak();
        Assert.Equal($"{name}, 3,36", AsWritten.Numbers($"{name}, 3.36"));
    }

    // What is read back is what was typed.
    [Theory]
    [InlineData("2.5 bar", "bar")]
    [InlineData("870", "mm")]
    [InlineData("870 ± 0.5", "mm")]
    [InlineData("3.5", "°")]
    [InlineData("20 1/2", "in")]
    public void It_still_is_the_same_number(string typed, string granted)
    {
        using var spoken = Language.Dutch.Speak();
        var unit = Units.Spelt(granted)!;
        var (before, after) = (QuantityText.Read(typed, unit.Kind, unit).OrRefuse(), QuantityText.Read(AsWritten.InWords(typed, unit), unit.Kind, unit).OrRefuse());

        Assert.Equal((before.Value, before.StandardUncertainty), (after.Value, after.StandardUncertainty));
    }

    [Fact]
    public void In_English_the_point_stands()
    {
        Assert.Equal("2.5 bar", AsWritten.InWords("2,5 bar", Units.Bar));
        Assert.Equal("3:6.125 m", AsWritten.Numbers("3:6.125 m"));
    }

    // Before the colon a comma parts two wheels: it is no decimal mark, and is not to be read as one.
    [Theory]
    [InlineData("10:20.5", Wheels.OneHeld, "10:20,5")]
    [InlineData("9.5,10.5:41", Wheels.Each, "9,5; 10,5:41")]
    public void A_count_keeps_its_wheels_apart(string typed, Wheels wheels, string said)
    {
        using var spoken = Language.Dutch.Speak();
        Assert.Equal(said, TurnReading.Read(typed, wheels).OrRefuse().InWords);
    }

    [Fact]
    public void A_weighing_names_its_unit() => Assert.Equal("front 700 kg", WeighReading.Read("front 700").OrRefuse().InWords);
}
