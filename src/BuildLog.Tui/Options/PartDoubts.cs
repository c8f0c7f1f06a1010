using System.Text.RegularExpressions;
using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Options;

/// <summary>What the record says of a part of the shop that has to be known before it is bolted on: why it came off, its condition, whose it is.</summary>
/// <param name="Told">In the shop's own words; null where it says nothing.</param>
/// <param name="IsDoubtful">These words speak of damage, or the part is somebody else's.</param>
internal sealed partial record PartDoubts(string? Told, bool IsDoubtful)
{
    /// <param name="part">The part.</param>
    /// <param name="last">The fitment it came off last; null where it was never fitted, or is fitted now.</param>
    public static PartDoubts Of(Component part, Fitment? last)
    {
        var cameOff = last is { ReasonOff.Length: > 0, ToDay: { } day } ? Spoken($"came off {last.Vehicle.Name} {DayText.InShort(day)}: {last.ReasonOff}") : null;
        var words = Joined(part.Ownership?.InWords(), cameOff, part.Condition);
        if (!Damage().IsMatch(words)) words = Joined(words, Sentences(part.Notes).FirstOrDefault(sentence => Damage().IsMatch(sentence)));
        return new(words.Length == 0 ? null : words, part.Ownership is not null || Damage().IsMatch(words));
    }

    /// <summary>The same of a part that nobody has asked the record about yet; of a new one nothing is told.</summary>
    public static PartDoubts Of(Shop shop, Component part)
        => Of(part, part.Id == 0 ? null : shop.LastOfLooseParts().FirstOrDefault(fitment => fitment.ComponentId == part.Id));

    /// <summary><c>inspect first: came off Brindle 12 Oct 2024: pinion chipped</c>; null where nothing speaks against bolting it on.</summary>
    public string? InWords => IsDoubtful && Told is { } told ? Spoken($"inspect first: {told}") : null;

    private static string Joined(params string?[] told)
        => string.Join("; ", told.Where(each => !string.IsNullOrWhiteSpace(each)).Select(each => each!.Trim().TrimEnd('.')));

    private static IEnumerable<string> Sentences(string notes) => notes.Split(['.', '\n'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    // What the trade writes on a part that is not to be bolted on as it lies, in the languages spoken: a record holds what its writers speak. A word that is missing here is still shown, it only does not put the part last.
    [GeneratedRegex(
        @"\b(broke|broken|breaks|crack\w*|bent|chipped|worn|noisy|whin(e|es|ed|ing)|howls?|leak\w*|damaged?|seized|fail(s|ed)|blown|scrap|jumps|slips|rust(y|ed)|rotten|pitted|scored|burnt|knocks|rattles|grinds|faulty|defective|missing|"
        + @"gebroken|gescheurd|scheur(en|tje)?|gebarsten|barst(en|je)?|krom|verbogen|versleten|lek(t|ken|kend|kage)?|beschadigd?|schade|vastgelopen|kapot|defecte?|jankt|huilt|loeit|slipt|springt|roest(ig)?|verroest|verrot|ingevreten|klopt|rammelt|kraakt|ontbreekt)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Damage();
}
