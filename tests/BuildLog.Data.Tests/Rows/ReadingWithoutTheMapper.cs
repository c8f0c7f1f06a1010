using BuildLog.Data.Files;
using BuildLog.Data.Tests.Crashes;
using Xunit;

namespace BuildLog.Data.Tests.Rows;

/// <summary>A program that only reads what screens and the command line wait for.</summary>
public sealed class ReadingWithoutTheMapper : IDisposable
{
    public const string Word = "read-without-the-mapper";

    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Loads_no_object_mapper()
    {
        ShopOfEveryKind.Enter(test.Shop);
        using var program = new OtherProgram(Word, test.Path);
        Assert.Equal(["read by hand: no mapper", "read by the mapper: mapper"], program.ReadToEnd());
    }

    /// <summary>The program.</summary>
    public static int Read(string path)
    {
        using var shop = ShopFile.Open(path);
        foreach (var vehicle in shop.Vehicles())
        {
            _ = shop.DrivelineOn(vehicle, new(2026, 1, 1));
            _ = shop.Difference(vehicle, new(2024, 1, 1), new(2026, 1, 1));
            _ = (shop.GoalsOf(vehicle), shop.History(vehicle), shop.Sessions(vehicle), shop.Fitments(vehicle));
            _ = (shop.Costs(vehicle), shop.Spent(vehicle), shop.Budget(vehicle), shop.Numbers(vehicle), shop.AttachmentsOf(vehicle));
            _ = (shop.Jobs(vehicle), shop.Hours(vehicle), shop.RoadTests(vehicle), shop.Retorques(vehicle));
        }

        foreach (var place in shop.Parts()) _ = shop.LifeOf(place.Component);
        Console.WriteLine($"read by hand: {Loaded()}");
        _ = shop.Changes();
        Console.WriteLine($"read by the mapper: {Loaded()}");
        return 0;
    }

    private static string Loaded()
        => AppDomain.CurrentDomain.GetAssemblies().Any(assembly => assembly.GetName().Name!.StartsWith("Microsoft.EntityFrameworkCore", StringComparison.Ordinal)) ? "mapper" : "no mapper";
}
