using System.IO.Compression;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using BuildLog.Gearing.Quantities;
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

    // This process is the one, each program it runs the other.
    [Fact]
    public void Write_in_turn_and_each_sees_what_the_other_wrote()
    {
        var brindle = test.Vehicle("Brindle");
        Assert.Equal("Agnes", Other(Writer.Changing, test.Path, "Brindle", "Agnes"));
        Assert.Equal("Agnes", test.Shop.FindVehicle("Brindle").Owner);

        test.Shop.Change(test.Shop.FindVehicle("Brindle"), vehicle => vehicle.Notes = "brakes next");
        Assert.Equal("Piet", Other(Writer.Changing, test.Path, "Brindle", "Piet"));
        Assert.Equal(("Piet", "brakes next"), (test.Shop.FindVehicle("Brindle").Owner, test.Shop.FindVehicle("Brindle").Notes));
        Assert.Equal(4, test.ChangesOf(brindle).Count);
    }

    [Fact]
    public void Do_not_write_over_what_the_other_changed_meanwhile()
    {
        var asRead = test.Vehicle("Brindle");
        Other(Writer.Changing, test.Path, "Brindle", "Agnes");
        Assert.Equal(Fault.ChangedSince, Assert.Throws<RecordException>(() => test.Shop.Change(asRead, vehicle => vehicle.Owner = "Piet")).Fault);
        Assert.Equal("Agnes", test.Shop.FindVehicle("Brindle").Owner);
    }

    [Fact]
    public void Undo_the_others_change_before_an_own_that_it_stands_on()
    {
        test.Vehicle("Brindle");
        var own = test.Shop.Changes()[0];
        Other(Writer.Changing, test.Path, "Brindle", "Agnes");
        Assert.Equal(
            "'added vehicle Brindle' cannot be taken back. 'changed vehicle Brindle' came later and stands on it: undo that first.",
            Assert.Throws<RefusedException>(() => test.Shop.Undo(own)).Message);

        Assert.Equal("changed vehicle Brindle", test.Shop.Undo());
        Assert.Equal("", test.Shop.FindVehicle("Brindle").Owner);
        Assert.Equal("added vehicle Brindle", test.Shop.Undo());
        Assert.Empty(test.Shop.Vehicles());
    }

    [Fact]
    public void Carry_a_record_to_another_file_and_it_is_the_same()
    {
        DemoShop.Fill(test.Shop);
        using var there = new TestShop();
        string sent = Path.Combine(test.Folder, "sent.zip"), again = Path.Combine(test.Folder, "again.zip");
        var count = Other(Writer.Exporting, test.Path, sent);
        Assert.Equal(count, Other(Writer.Importing, there.Path, sent));
        Assert.Equal(count, Other(Writer.Exporting, there.Path, again));
        Assert.Equal(Content(sent), Content(again));
        Assert.Equal("0", Other(Writer.Importing, there.Path, again));
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

    [Fact]
    public void That_collide_for_longer_than_a_change_waits_tell_and_go_on_waiting()
    {
        var told = new List<OtherWriter>();
        test.Shop.GoesOnWaiting = other =>
        {
            told.Add(other);
            return true;
        };
        using var other = new OtherProgram(Writer.Holding, test.Path, "4.5");
        Assert.Equal("writing", other.ReadLine());
        Assert.Equal("Brindle", test.Shop.Add(new Vehicle { Name = "Brindle" }).Name);

        var first = Assert.IsType<OtherWriter>(told[0]);
        Assert.InRange(first.Waited.TotalSeconds, 2.5, 4.5);
        Assert.StartsWith($"Waiting, 3 s so far: another program is writing to {test.Path}.", $"{first}", StringComparison.Ordinal);
        Assert.Single(test.Shop.Vehicles());
    }

    [Fact]
    public void That_collide_for_too_long_leave_what_was_to_be_stored_as_it_was()
    {
        var brindle = new Vehicle { Name = "Brindle" };
        test.Shop.GoesOnWaiting = _ => false;
        using (var other = new OtherProgram(Writer.Holding, test.Path, "60"))
        {
            Assert.Equal("writing", other.ReadLine());
            Assert.Equal(Fault.Busy, Assert.Throws<RecordException>(() => test.Shop.Add(brindle)).Fault);
            other.Kill();
        }

        Assert.Empty(test.Shop.Vehicles());
        Assert.Equal(brindle.Uid, test.Shop.Add(brindle).Uid);
        Assert.Single(test.Shop.Vehicles());
    }

    // What it said, which is one line.
    private static string Other(params string[] arguments)
    {
        using var program = new OtherProgram(arguments);
        var said = program.ReadToEnd();
        Assert.Equal(0, program.ExitCode);
        return Assert.Single(said);
    }

    private static List<string> Content(string zip)
    {
        using var archive = ZipFile.OpenRead(zip);
        return [.. archive.Entries.Select(entry => $"{entry.FullName} {entry.Crc32}").Order(StringComparer.Ordinal)];
    }
}
