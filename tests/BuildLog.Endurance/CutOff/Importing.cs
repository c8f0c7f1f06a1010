using BuildLog.Data.Files;

namespace BuildLog.Endurance.CutOff;

/// <summary>Imports the demo shop. All of it has come in or nothing, and where nothing has, it comes in the next time.</summary>
internal sealed class Importing : Work
{
    public const string Word = "importing";

    public override string Name => Word;

    public override void Lay(string folder)
    {
        Records.Empty.LayIn(folder);
        File.Copy(Records.DemoArchive, Zip(folder));
    }

    public override void Do(string folder, int times, Action<string> say)
    {
        using var shop = ShopFile.Open(Records.In(folder));
        say(FormattableString.Invariant($"{shop.Import(Zip(folder)).Added.Values.Sum()}"));
    }

    public override IEnumerable<string> Troubles(string folder, IReadOnlyList<string> said)
    {
        var record = Records.In(folder);
        foreach (var trouble in RecordCheck.Of(record).Troubles()) yield return trouble;
        using var shop = ShopFile.Open(record);
        var before = shop.Vehicles().Count;
        if (said.Count > 0 && before == 1) yield return "what was imported is lost";

        var report = shop.Import(Zip(folder));
        if (before > 1 && report.Added.Values.Sum() > 0) yield return FormattableString.Invariant($"{report.Added.Values.Sum()} entries had not come in with the others");
        if (report.Differing.Count > 0) yield return "what came in differs from what was exported";
        foreach (var trouble in RecordCheck.Of(record).Troubles()) yield return trouble;
    }

    private static string Zip(string folder) => Path.Combine(folder, "demo.zip");
}
