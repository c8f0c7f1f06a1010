namespace BuildLog.Tui.Tests.Commands;

/// <summary>Each line of nonsense gets one sentence: what, where, and what would be right; exit code 2.</summary>
public sealed class WrongInputTests
{
    [Theory]
    [InlineData("'30 inn': the unit 'inn' is not known", "speed", "--rpm", "2300", "--gear", "1", "--axle", "4.1", "--diameter", "30 inn")]
    [InlineData("is no tyre size", "tyre", "banana")]
    [InlineData("is expected, not 'Q15'", "tyre", "205/65Q15")]
    [InlineData("wheel turns must be more than zero", "axle", "--wheels", "one-held", "--turns", "0:20")]
    [InlineData("propshaft turns must be more than zero", "axle", "--wheels", "one-held", "--turns", "10:-20")]
    [InlineData("decimals use the point", "axle", "--wheels", "one-held", "--turns", "10:20,5")]
    [InlineData("decimals use the point", "gearbox", "--turns", "10:30,1")]
    [InlineData("the wheel turns cancel", "axle", "--turns", "10,-10:3")]
    [InlineData("half a wheel turn", "axle", "--wheels", "one-held", "--turns", "0.4:1")]
    [InlineData("no axle ratio", "speed", "--rpm", "2300", "--gear", "1", "--axle", "0", "--circumference", "2m")]
    [InlineData("no axle ratio", "speed", "--rpm", "2300", "--gear", "1", "--axle", "47.7", "--circumference", "2m")]
    [InlineData("Say which wheels turned", "axle", "--turns", "10:20.5")]
    [InlineData("leave it out", "axle", "--wheels", "together", "--turns", "10,10:41")]
    [InlineData("could be 1234 or 1.234", "rollout", "--loaded", "yes", "--roll", "1:1,234 mm")]
    [InlineData("Say whether the vehicle stood on the tyre", "rollout", "--roll", "1:2040mm")]
    [InlineData("Leave out exactly one", "speed", "--rpm", "2300")]
    [InlineData("All five are given", "speed", "--rpm", "2300", "--gear", "1", "--axle", "4.1", "--circumference", "2m", "--speed", "60 km/h")]
    [InlineData("'2m' fits no road tyre: 0.25 to 1.43 m. Is it the circumference?", "speed", "--rpm", "2300", "--gear", "1", "--axle", "4.1", "--diameter", "2m")]
    [InlineData("'20m' fits no road tyre: 0.8 to 4.5 m.", "speed", "--rpm", "2300", "--gear", "1", "--axle", "4.1", "--circumference", "20m")]
    [InlineData("'30mm' is no tread depth: a tyre of this size wears by 0 to 16 mm", "tyre", "205/65R15", "--worn", "30mm")]
    [InlineData("Give the tyre once", "speed", "--rpm", "2300", "--gear", "1", "--axle", "4.1", "--circumference", "2m", "--diameter", "27 in")]
    [InlineData("no system of units", "tyre", "205/65R15", "--units", "furlongs")]
    [InlineData("--bogus", "axle", "--bogus")]
    [InlineData("not a pair of tooth counts", "axle", "--teeth", "41")]
    [InlineData("propshaft first? Then it is 4.74", "axle", "--wheels", "one-held", "--turns", "23.7:10")]
    [InlineData("A comma parts the ratios", "axle", "--wheels", "together", "--turns", "10:41", "--listed", "3,90,4,10")]
    [InlineData("more than one number", "axle", "--wheels", "together", "--turns", "10:41", "--tag", "38 2")]
    [InlineData("Example: --align 0.02", "axle", "--wheels", "together", "--turns", "10:41", "--align", "x")]
    [InlineData("Without --record it would not be kept", "axle", "--wheels", "together", "--turns", "10:41", "--date", "2024-01-01")]
    [InlineData("Without --wanted it would not be kept", "axle", "--wheels", "together", "--turns", "10:41", "--price", "180 EUR")]
    [InlineData("only kept with --record", "gearbox", "--turns", "10:30", "--for", "1")]
    [InlineData("keeps teeth on the axle's form", "axle", "--teeth", "41/10", "--record", "Brindle")]
    [InlineData("'29/0': a gear has 4 to 200 teeth", "gearbox", "--teeth", "29/0 1")]
    [InlineData("write first gear first", "gearbox", "--teeth", "29/19 31/14 25/18 1", "--ratios", "1,2.12,3.38")]
    [InlineData("Example: --tape \"2 mm\"", "rollout", "--loaded", "no", "--roll", "1:2040mm", "--tape", "0")]
    [InlineData("Example: --worn \"4 mm\"", "tyre", "205/65R15", "--worn", "4")]
    [InlineData("a load index such as 94", "tyre", "205/65R15 H")]
    [InlineData("116 is below 120 of dual fitment", "tyre", "205/65R15 116/120Q")]
    [InlineData("stand in quotes", "tyre", "205/65R15", "94H")]
    [InlineData("Example: --circumference 2.040m", "speed", "--rpm", "2300", "--gear", "1", "--axle", "4.1", "--circumference", "2,040m")]
    [InlineData("no engine speed", "speed", "--rpm", "2.300", "--gear", "1", "--axle", "4.1", "--circumference", "2m")]
    [InlineData("The construction goes with --diameter", "speed", "--rpm", "2300", "--gear", "1", "--axle", "4.1", "--circumference", "2m", "--construction", "bias")]
    public void Is_answered_by_one_sentence_and_exit_code_2(string sentence, params string[] arguments)
    {
        var said = Said.By(arguments);

        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
        Assert.Equal("", said.Output);
        Assert.Single(said.Errors.TrimEnd().Split('\n'));
    }

    [Fact]
    public void Is_an_object_on_standard_error_with_json()
    {
        var error = Said.By("speed", "--rpm", "2300", "--gear", "47.7", "--axle", "4.1", "--circumference", "2m", "--json").Error;

        Assert.Equal("out-of-range", error.GetProperty("code").GetString());
        Assert.Equal("--gear", error.GetProperty("option").GetString());
        Assert.Equal("--gear 0.82", error.GetProperty("example").GetString());
        Assert.Contains("47.7", error.GetProperty("message").GetString(), StringComparison.Ordinal);
    }
}
