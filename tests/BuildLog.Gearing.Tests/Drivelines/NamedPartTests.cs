using BuildLog.Gearing.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Drivelines;

public sealed class NamedPartTests
{
    [Theory]
    [InlineData("axle", "Harrow banjo", "axle Harrow banjo")]
    [InlineData("gearbox", "gearbox 2.95 1.52 1", "gearbox 2.95 1.52 1")]
    [InlineData("axle", "Axle from the van", "Axle from the van")]
    [InlineData("rear axle", "axle from the van", "rear axle from the van")]
    [InlineData("rear axle", "rear axle 3.08", "rear axle 3.08")]
    [InlineData("axle", "axlewright special", "axle axlewright special")]
    [InlineData("job", "", "job")]
    [InlineData("axle", "axle", "axle")]
    [InlineData("rear axle", "axle", "rear axle")]
    [InlineData("gearbox", "Gearbox, short", "Gearbox, short")]
    [InlineData("axle", "axle2", "axle axle2")]
    public void The_kind_is_said_once(string kind, string name, string words) => Assert.Equal(words, NamedPart.InWords(kind, name));
}
