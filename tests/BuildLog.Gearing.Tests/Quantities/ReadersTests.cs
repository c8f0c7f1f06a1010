using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>Whatever is typed, a reader answers with a value or with one sentence.</summary>
public sealed class ReadersTests
{
    public static TheoryData<string> Names => [.. Readers.Keys];

    private static Dictionary<string, Func<string, Refusal?>> Readers { get; } = new()
    {
        ["length"] = text => QuantityText.Read(text, Kind.Length).Refusal,
        ["number"] = text => QuantityText.ReadNumber(text).Refusal,
        ["share"] = text => QuantityText.Read(text, Kind.Share).Refusal,
        ["area"] = text => QuantityText.Read(text, Kind.Area).Refusal,
        ["torque"] = text => QuantityText.Read(text, Kind.Torque).Refusal,
        ["torque point"] = text => TorquePoint.Read(text).Refusal,
        ["hill"] = text => HillGoal.Read(text, "100 km/h").Refusal,
        ["hill start"] = text => HillStartGoal.Read(text).Refusal,
        ["top speed"] = text => TopSpeedGoal.Read(text).Refusal,
        ["overall low"] = text => OverallLowGoal.Read(text).Refusal,
        ["tyre diameter"] = text => LengthLimit.ReadTyreDiameter(text).Refusal,
        ["tyre width"] = text => LengthLimit.ReadTyreWidth(text).Refusal,
        ["track"] = text => LengthLimit.ReadTrack(text).Refusal,
        ["speed of a hill"] = text => HillGoal.Read("5 %", text).Refusal,
        ["angle"] = text => QuantityText.Read(text, Kind.Angle).Refusal,
        ["power"] = text => QuantityText.Read(text, Kind.Power).Refusal,
        ["mass"] = text => VehicleLoad.ReadMass(text).Refusal,
        ["drag area"] = text => VehicleLoad.ReadDragArea(text).Refusal,
        ["rolling resistance"] = text => VehicleLoad.ReadRollingResistance(text).Refusal,
        ["driven share"] = text => VehicleLoad.ReadDrivenShare(text).Refusal,
        ["altitude"] = text => VehicleLoad.ReadAltitude(text).Refusal,
        ["engine speed"] = text => CruiseGoal.ReadEngineSpeed(text).Refusal,
        ["road speed"] = text => CruiseGoal.ReadSpeed(text).Refusal,
        ["tolerance"] = text => CruiseGoal.Read("110 km/h", "2400", text).Refusal,
        ["count, one held"] = text => TurnReading.Read(text, Wheels.OneHeld).Refusal,
        ["count, each"] = text => TurnReading.Read(text, Wheels.Each).Refusal,
        ["roll"] = text => RollReading.Read(text).Refusal,
        ["tyre size"] = text => TyreSizeText.Read(text).Refusal,
        ["count of a gear"] = text => TurnReading.ReadGear(text).Refusal,
        ["gears in mesh"] = text => GearMesh.Read(text).Refusal,
        ["gear of two pairs"] = text => TwoStageGear.Read(text).Refusal,
        ["planetary set"] = text => Planetary.Read(text).Refusal,
        ["gear train"] = text => GearTrain.Read(text).Refusal,
        ["count, both alike"] = text => TurnReading.Read(text, Wheels.Together).Refusal,
        ["tolerance alone"] = text => CruiseGoal.ReadTolerance(text, CruiseGoal.ReadEngineSpeed("2400").OrRefuse()).Refusal,
        ["pressure"] = text => QuantityText.Read(text, Kind.Pressure).Refusal,
        ["force"] = text => QuantityText.Read(text, Kind.Force).Refusal,
        ["ratio of a gear"] = text => RatioRange.Gear.Read(text).Refusal,
        ["transfer case low"] = text => TransferCaseLow.Read(text).Refusal,
        ["air of a test"] = text => TestAir.Read(text).Refusal,
        ["step of a two-speed axle"] = text => TwoSpeedAxle.ReadStep(text).Refusal,
        ["axle as told"] = text => ToldPart.Axle(text, "axle", null).Refusal,
        ["overdrive as told"] = text => ToldPart.Overdrive(text, "unit").Refusal,
        ["gearbox as told"] = text => ToldPart.Gearbox(text, "box", InventedCar.Plain.Transmission).Refusal,
        ["tyres as told"] = text => ToldPart.Tyres(text, "tyres", null).Refusal,
        ["length without ±"] = text => QuantityText.ReadPlain(text, Kind.Length).Refusal,
        ["rotation"] = text => QuantityText.Read(text, Kind.Rotation).Refusal,
        ["speed"] = text => QuantityText.Read(text, Kind.Speed).Refusal,
        ["overdrive unit"] = text => OverdriveUnit.Read(text).Refusal,
        ["teeth"] = text => Teeth.Read(text).Refusal,
        ["quoted ratio"] = text => QuotedRatio.Read(text, RatioRange.Axle).Refusal,
        ["quoted ratio with its rounding"] = text => QuotedRatio.ReadMeasured(text, RatioRange.Axle, "axle").Refusal,
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void No_text_makes_a_reader_throw_and_every_refusal_is_one_short_line_that_names_the_place(string name)
        => AnyTyped.Meets(name, Readers[name]);

    // A new reader that is not among these would never meet the texts above.
    [Fact]
    public void Every_public_reader_is_among_them()
    {
        var source = string.Concat(ReadersInThisFile());
        var readers = typeof(QuantityText).Assembly.GetExportedTypes()
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(method => method.ReturnType is { IsGenericType: true } made && made.GetGenericTypeDefinition() == typeof(Parsed<>))
            .Where(method => method.GetParameters() is [{ ParameterType: { } first }, ..] && first == typeof(string))
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name}(");

        Assert.All(readers.Distinct().Where(reader => reader is not ("RatioRange.Read(" or "Parsed`1.In(")), reader => Assert.Contains(reader, source, StringComparison.Ordinal));
    }

    private static string[] ReadersInThisFile([CallerFilePath] string path = "") => File.ReadAllLines(path);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_page_of_text_is_refused_as_quickly_as_a_word(string name) => AnyTyped.MeetsPages(name, Readers[name]);

    // Turkish has a dotted capital I, German a decimal comma; neither is the reader's business.
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_machines_language_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);

            Assert.Equal(20.5, TurnReading.Read("10:20.5", Wheels.OneHeld).OrRefuse().Propshaft);
            Assert.Equal(6.12, RollReading.Read("3:6,12 M").OrRefuse().Distance, 1e-12);
            Assert.Equal(240, TyreSizeText.Read("lt205/65zr15 94v xl tl").OrRefuse().SpeedLimitKmh);
            Assert.Equal(40, CruiseGoal.Read("110 KM/H", "2400 1/MIN", "AT MOST").OrRefuse().Wanted.High, 1e-12);
            Assert.Equal("4.1", Rounded.Exact(QuotedRatio.Read("4,10", RatioRange.Axle).OrRefuse().Ratio));
            Assert.Equal("'47.7' is no axle ratio: it lies between 1.5 and 12.", RatioRange.Axle.Read("47.7").Refusal!.Message);
            Assert.Contains("makes 0.204 m", RollReading.Read("1:204mm").Refusal!.Message, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_example_of_a_refusal_is_right(string name) => AnyTyped.IsRightInItsExamples(Readers[name]);
}
