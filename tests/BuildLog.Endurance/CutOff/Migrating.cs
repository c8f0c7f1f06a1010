using BuildLog.Data.Files;
using BuildLog.Data.Tests.Files;

namespace BuildLog.Endurance.CutOff;

/// <summary>Opens a record of an earlier schema. The next start has all of it in today's, whatever was left half made.</summary>
internal sealed class Migrating : Work
{
    public const string Word = "migrating";

    private const int Fitments = 36;

    public override string Name => Word;

    public override void Lay(string folder) => EarlierRecord.Make("WholeMarriage.sql", Records.In(folder));

    public override void Do(string folder, int times, Action<string> say)
    {
        ShopFile.Open(Records.In(folder)).Dispose();
        say("opened");
    }

    public override IEnumerable<string> Troubles(string folder, IReadOnlyList<string> said)
    {
        var record = Records.In(folder);
        using (var shop = ShopFile.Open(record))
        {
            var fitments = shop.Vehicles().Sum(vehicle => shop.Fitments(vehicle).Count);
            if (fitments != Fitments) yield return FormattableString.Invariant($"{fitments} fitments instead of {Fitments}");
            if (shop.Find("pinion chipped").Count == 0) yield return "what was entered is not found by its words";
        }

        foreach (var trouble in RecordCheck.Of(record).Troubles()) yield return trouble;
        foreach (var left in Directory.GetFiles(folder, "shop.db.new*")) yield return $"{Path.GetFileName(left)} is left over";
        if (Directory.GetFiles(Path.Combine(folder, "backups"), "*.db").Length == 0) yield return "there is no copy of before the migration";
    }
}
