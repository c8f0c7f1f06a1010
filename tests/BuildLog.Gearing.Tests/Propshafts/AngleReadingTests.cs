using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Propshafts;

public sealed class AngleReadingTests
{
    [Theory]
    [InlineData("output side 3.5 deg", Member.Output, Seen.Side, 3.5)]
    [InlineData(" Pinion ABOVE -1 ", Member.Pinion, Seen.Above, -1)]
    [InlineData("shaft side 45°", Member.Shaft, Seen.Side, 45)]
    [InlineData("shaft side -45°", Member.Shaft, Seen.Side, -45)]
    public void An_angle_is_read_with_its_member_and_from_where_it_was_seen(string text, Member of, Seen from, double degrees)
    {
        var reading = AngleReading.Read(text).OrRefuse();

        Assert.Equal((of, from, text.Trim()), (reading.Of, reading.From, reading.ToString()));
        Assert.Equal(degrees, reading.Angle.Value / InventedShaft.Degree, 1e-9);
    }

    [Theory]
    [InlineData("axle side 3 deg", "angle")]
    [InlineData("shaft below 3 deg", "angle")]
    [InlineData("shaft side", "angle")]
    [InlineData("1 0 3 deg", "angle")]
    [InlineData("shaft 0 3 deg", "angle")]
    [InlineData("shaft 5 deg", "angle")]
    [InlineData("7 side 3 deg", "angle")]
    [InlineData("shaft side 45.1 deg", "out-of-range")]
    [InlineData("shaft side -46 deg", "out-of-range")]
    [InlineData("shaft side 3 mm", "wrong-kind")]
    public void What_is_no_angle_of_a_shaft_line_is_refused(string text, string code) => Assert.Equal(code, AngleReading.Read(text).Refusal!.Code);

    [Fact]
    public void What_a_reading_begins_with_is_read_as_that_member_from_there()
        => Assert.All(
            from member in Enum.GetValues<Member>() from seen in Enum.GetValues<Seen>() select (member, seen),
            each => Assert.Equal(each, Read($"{AngleReading.Beginning(each.member, each.seen)} 3 deg")));

    private static (Member, Seen) Read(string text) => AngleReading.Read(text).OrRefuse() is var reading ? (reading.Of, reading.From) : default;
}
