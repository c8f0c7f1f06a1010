using System.Diagnostics;
using System.Globalization;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- kills 2000</c>: a writer through the shop, killed at a moment of no one's choice as often as asked; every change it said was stored has to be there.</summary>
internal static class KilledWriters
{
    public const string Writing = "write-until-killed";

    /// <summary>Writes and says so until it is killed.</summary>
    public static int Write(string path)
    {
        using var shop = ShopFile.Open(path);
        while (true) Console.Out.WriteLine(shop.Add(new Vehicle { Name = Guid.CreateVersion7().ToString("N") }).Name);
    }

    public static int Of(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-kills-").FullName;
        var path = Path.Combine(folder, "shop.db");
        var moment = new Random(20_260_503);
        ShopFile.Open(path).Dispose();
        var (stored, lost, unsound) = (new List<string>(), 0, 0);
        for (var round = 1; round <= rounds; round++)
        {
            stored.AddRange(RunAndKill(path, moment.Next(1, 30)));
            using (var shop = ShopFile.Open(path)) lost = stored.Except(shop.Vehicles().Select(vehicle => vehicle.Name)).Count();
            if (!RecordCheck.Of(path).IsSound) unsound++;
            if (round % 50 == 0 || round == rounds) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{round} kills, {stored.Count} acknowledged changes, {lost} lost, {unsound} times unsound"));
        }

        Directory.Delete(folder, recursive: true);
        return lost + unsound == 0 ? 0 : 1;
    }

    private static List<string> RunAndKill(string path, int changes)
    {
        using var writer = Process.Start(new ProcessStartInfo("dotnet", ["exec", typeof(KilledWriters).Assembly.Location, Writing, path]) { RedirectStandardOutput = true })!;
        var said = Enumerable.Range(0, changes).Select(_ => writer.StandardOutput.ReadLine()).OfType<string>().ToList();
        writer.Kill();

        // A last line that is cut off was never said.
        said.AddRange(writer.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line.Length == 32));
        writer.WaitForExit();
        return said;
    }
}
