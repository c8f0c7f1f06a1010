using BuildLog.Data.Vehicles;
using Microsoft.Data.Sqlite;
using Xunit;

namespace BuildLog.Data.Tests.Crashes;

public sealed class TwoPrograms : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Write_in_turn_and_a_third_sees_it_all()
    {
        using var left = new OtherProgram(Writer.ThroughTheShop, test.Path, "left", "25");
        using var right = new OtherProgram(Writer.ThroughTheShop, test.Path, "right", "25");
        var said = left.ReadToEnd().Concat(right.ReadToEnd()).Order(StringComparer.Ordinal).ToList();

        Assert.Equal((0, 0, 50), (left.ExitCode, right.ExitCode, said.Count));
        Assert.Equal(said, test.Shop.Vehicles().Select(vehicle => vehicle.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task That_collide_wait_for_each_other()
    {
        using var other = new SqliteConnection($"Data Source={test.Path};Pooling=False");
        var token = TestContext.Current.CancellationToken;
        await other.OpenAsync(token);
        await using var held = await other.BeginTransactionAsync(token);
        var adding = Task.Run(() => test.Shop.Add(new Vehicle { Name = "Brindle" }), token);
        await Task.Delay(TimeSpan.FromSeconds(1), token);
        Assert.False(adding.IsCompleted);

        await held.RollbackAsync(token);
        Assert.Equal("Brindle", (await adding).Name);
        Assert.Single(test.Shop.Vehicles());
    }
}
