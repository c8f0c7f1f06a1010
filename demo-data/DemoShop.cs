using BuildLog.Data;

namespace BuildLog.DemoData;

/// <summary>An invented shop with months of work in it, entered through the same door as anybody's.</summary>
public static class DemoShop
{
    /// <summary>A new file in a folder of its own that only its owner can read; whoever asks for it deletes it.</summary>
    public static string CreateFreshCopy()
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("buildlog-demo-").FullName, "demo-shop.db");
        DemoTemplate.CopyTo(path);
        return path;
    }

    /// <summary>Enters the whole invented shop; see README.md for its story.</summary>
    public static void Fill(Shop shop)
    {
        var tolland = Yard.Enter(shop);
        BrindleHunt.Enter(shop, Brindle.Enter(shop), tolland);
        Ottery.Enter(shop);
        Tansy.Enter(shop);
        Quillon.Enter(shop);
        Haldor.Enter(shop);
        Pellow.Enter(shop);
    }
}
