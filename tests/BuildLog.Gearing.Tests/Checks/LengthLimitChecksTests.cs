using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>205/65R15: 381 + 2 · 133.25 = 647.5 mm high, 205 mm wide; both as a label says it, to 1 and 2 %.</remarks>
public sealed class LengthLimitChecksTests
{
    [Theory]
    [InlineData("670 mm", Verdict.Fits)]
    [InlineData("650 mm", Verdict.Watch)]
    [InlineData("630 mm", Verdict.Clash)]
    public void Tyre_diameter(string most, Verdict verdict)
        => Assert.Equal(verdict, Find(new TyreDiameterCheck(), Car, OwnersGoals.None with { TyreDiameter = LengthLimit.ReadTyreDiameter(most).OrRefuse() }).Verdict);

    [Theory]
    [InlineData("220 mm", Verdict.Fits)]
    [InlineData("205 mm", Verdict.Watch)]
    [InlineData("190 mm", Verdict.Clash)]
    public void Tyre_width(string most, Verdict verdict)
        => Assert.Equal(verdict, Find(new TyreWidthCheck(), Car, OwnersGoals.None with { TyreWidth = LengthLimit.ReadTyreWidth(most).OrRefuse() }).Verdict);

    // UN R30: 0.4 of the rim's excess over the measuring rim (6 in): on 7 in 205 + 0.4 · 25.4 = 215.16 mm.
    [Fact]
    public void A_wider_rim_spreads_the_tyre()
        => Assert.Equal(0.21516, Find(new TyreWidthCheck(), Car, OwnersGoals.None with { TyreWidth = LengthLimit.ReadTyreWidth("230 mm").OrRefuse() }, rim: 7).Value!.Value, 1e-9);

    // 1500 mm between the faces, ET 25: 1450 mm; 1440 wants ET 30 or faces of 1490.
    [Theory]
    [InlineData("1450 mm", Verdict.Fits)]
    [InlineData("1440 mm", Verdict.Clash)]
    public void Track(string most, Verdict verdict)
    {
        var finding = Find(new TrackCheck(), Car, OwnersGoals.None with { Track = LengthLimit.ReadTrack(most).OrRefuse() }, rim: 6);

        Assert.Equal(verdict, finding.Verdict);
        if (verdict == Verdict.Clash)
            Assert.Equal(["wheels with an offset of 30 mm or more", "an axle of 1490 mm or less between its hub faces"], finding.Cures);
    }

    [Fact]
    public void Without_a_limit_there_is_nothing_to_say()
        => Assert.Empty(new ICheck[] { new TyreDiameterCheck(), new TyreWidthCheck(), new TrackCheck() }.SelectMany(check => check.Look(Car, OwnersGoals.None)));

    [Fact]
    public void With_a_limit_what_is_missing_is_asked_for()
    {
        var goals = OwnersGoals.None with
        {
            TyreDiameter = LengthLimit.ReadTyreDiameter("670 mm").OrRefuse(),
            TyreWidth = LengthLimit.ReadTyreWidth("220 mm").OrRefuse(),
            Track = LengthLimit.ReadTrack("1450 mm").OrRefuse(),
        };

        Assert.All(
            new ICheck[] { new TyreDiameterCheck(), new TyreWidthCheck(), new TrackCheck() },
            check => Assert.Equal(Verdict.Open, Assert.Single(check.Look(InventedCar.Plain, goals)).Verdict));
    }

    private static Driveline Car => InventedCar.Plain with
    {
        RearAxle = InventedCar.Axle(4.10) with { HubFaces = InventedShaft.Known(1.5) },
        Tyres = new("tyres", null, TyreSizeText.Read("205/65R15").OrRefuse()),
    };

    private static Finding Find(ICheck check, Driveline car, OwnersGoals goals, double? rim = null)
        => Assert.Single(check.Look(
            rim is { } inches ? car with { Tyres = car.Tyres! with { Wheel = new(InventedShaft.Known(inches * 0.0254), InventedShaft.Known(0.025)) } } : car, goals));
}
