using BuildLog.Gearing.Checks;
namespace BuildLog.Tui.Workbench;

/// <summary>The driveline as a chain of boxes from the engine to the tyres.</summary>
/// <param name="Trunk">From the engine to the last part all driven axles share.</param>
/// <param name="Branches">One chain per driven axle, front first. A two-wheel drive has one branch or none (all in the trunk).</param>
public sealed record DrivelineModel(
    IReadOnlyList<DrivelineBox> Trunk,
    IReadOnlyList<IReadOnlyList<DrivelineBox>> Branches)
{
    public static DrivelineModel Single(params DrivelineBox[] chain) => new(chain, []);

    /// <summary>All boxes in the order the cursor walks them.</summary>
    public IEnumerable<DrivelineBox> Boxes => Trunk.Concat(Branches.SelectMany(branch => branch));
}

/// <summary>One place in the driveline and what is fitted there.</summary>
/// <param name="Position">The position's key, handed back to the act that opens it.</param>
/// <param name="Caption">The position's word: "engine", "gearbox", "rear axle", "tyres".</param>
/// <param name="Part">Name of what is fitted; null where nothing is.</param>
/// <param name="Number">Its key number as text with unit: "4.10", "2.04 m".</param>
/// <param name="PlusMinus">Its half-width as text without sign, in the number's unit: "0.02"; empty where exact or unknown.</param>
/// <param name="Source">Short word for where the number comes from: "counted", "tag", "assumed".</param>
/// <param name="JointBefore">Worst verdict of the findings between this box and the one before it; null for none.</param>
/// <param name="Lines">The part's card: what the page below may say about it when the cursor stands on it.</param>
public sealed record DrivelineBox(
    string Position,
    string Caption,
    string? Part,
    string Number = "",
    string PlusMinus = "",
    string Source = "",
    Verdict? JointBefore = null,
    IReadOnlyList<string>? Lines = null);
