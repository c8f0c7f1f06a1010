using BuildLog.Data.Files;

namespace BuildLog.Endurance.CutOff;

/// <summary>Copies the demo shop again and again. The record stays as it was; a copy that bears its name is whole, and one that was made stays.</summary>
internal sealed class BackingUp : Work
{
    public const string Word = "backing up";

    private bool wasMade;

    public override string Name => Word;

    public override int RoundsOfAFolder => 20;

    public override int MostSaid => 3;

    public override void Lay(string folder) => Records.Demo.LayIn(folder);

    public override void Do(string folder, int times, Action<string> say)
    {
        for (var k = 1; k <= times; k++)
        {
            Backup.To(Records.In(folder), Copy(folder), overwrite: true);
            say(FormattableString.Invariant($"copy {k}"));
        }
    }

    public override IEnumerable<string> Troubles(string folder, IReadOnlyList<string> said)
    {
        wasMade |= said.Count > 0;
        foreach (var trouble in RecordCheck.Of(Records.In(folder)).Troubles()) yield return trouble;
        if (!File.Exists(Copy(folder)))
        {
            if (wasMade) yield return "the copy is lost";
            yield break;
        }

        // The record has its place before the attachments have all theirs, so only a copy that was said to be made has to have them.
        var health = RecordCheck.Of(Copy(folder));
        foreach (var trouble in (wasMade ? health : health with { Attachments = health.Attachments with { Missing = [] } }).Troubles()) yield return "the copy: " + trouble;
        using var copy = Records.Connect(Copy(folder));
        using var record = Records.Connect(Records.In(folder));
        const string counting = "SELECT (SELECT count(*) FROM Vehicles) || ' ' || (SELECT count(*) FROM Changes) || ' ' || (SELECT count(*) FROM Findables)";
        if (!Equals(copy.Ask(counting), record.Ask(counting))) yield return "the copy lacks entries";
    }

    private static string Copy(string folder) => Path.Combine(folder, "copy.db");
}
