namespace BuildLog.Tui.Measurements;

/// <summary>Turns being counted: whole turns in the order they came, and what they make so far. No terminal in it.</summary>
/// <param name="part">What is counted.</param>
public abstract class TallyModel(string part)
{
    /// <summary>Turns of the slow end that are enough as a rule.</summary>
    public const int UsualTurns = 10;

    private const char DrivenMark = 'o';
    private const char DrivingMark = 'i';
    private const char OtherDrivenMark = 'r';

    private readonly Stack<TallyEnd> counted = new();

    /// <summary>A turn was counted or taken back.</summary>
    public event EventHandler? Changed;

    public string Part => part;

    public abstract string Title { get; }

    public abstract string HelpPage { get; }

    /// <summary>What the slow end is called: wheel, output.</summary>
    public abstract string Driven { get; }

    /// <summary>What the quick end is called: propshaft, input; null where one end alone is counted.</summary>
    public abstract string? Driving { get; }

    /// <summary>What the second slow end is called, where both are counted; null where one is.</summary>
    public virtual string? OtherDriven => null;

    /// <summary>What the whole turns say, as of the last whole turn of the slow end.</summary>
    public abstract IReadOnlyList<string> Live { get; }

    public int DrivenTurns => counted.Count(end => end == TallyEnd.Driven);

    public int OtherDrivenTurns => counted.Count(end => end == TallyEnd.OtherDriven);

    public int DrivingTurns => counted.Count(end => end == TallyEnd.Driving);

    /// <summary>Counts one whole turn.</summary>
    /// <returns>Whether it is worth a bell: every tenth turn of either end.</returns>
    public bool Count(TallyEnd end)
    {
        counted.Push(end);
        Changed?.Invoke(this, EventArgs.Empty);
        return counted.Count(each => each == end) % 10 == 0;
    }

    /// <summary>Takes the last turn back; false when there is none.</summary>
    public bool Undo()
    {
        if (!counted.TryPop(out _)) return false;
        Changed?.Invoke(this, EventArgs.Empty);
        return true;
    }

    /// <summary>Why the count cannot be ended yet; null when it can.</summary>
    public virtual string? NotYet
        => DrivenTurns == 0 || DrivingTurns == 0 ? Spoken($"Count a turn of {Driven} and {Driving} at least; ten of the {Driven} are better.")
            : counted.Peek() != TallyEnd.Driven ? Spoken($"Stop on a whole turn of the {Driven}: turn on until its mark is back.")
            : null;

    /// <summary>Whether what is counted so far will do.</summary>
    public virtual bool IsEnough => DrivenTurns >= UsualTurns;

    /// <summary>Every turn in the order it came, to go on another day.</summary>
    public string Written
    {
        get => string.Concat(counted.Reverse().Select(MarkOf));
        init
        {
            foreach (var mark in value) counted.Push(mark switch { DrivenMark => TallyEnd.Driven, OtherDrivenMark => TallyEnd.OtherDriven, _ => TallyEnd.Driving });
        }
    }

    private static char MarkOf(TallyEnd end) => end switch
    {
        TallyEnd.Driven => DrivenMark,
        TallyEnd.OtherDriven => OtherDrivenMark,
        _ => DrivingMark,
    };

    /// <summary>The second slow end's whole turns when the first one's last was counted.</summary>
    protected int SettledOtherDrivenTurns => counted.SkipWhile(end => end != TallyEnd.Driven).Count(end => end == TallyEnd.OtherDriven);

    /// <summary>Between two turns of the slow end the quick one is ahead: only its turns before the last whole slow turn count.</summary>
    protected int SettledDrivingTurns => counted.SkipWhile(end => end != TallyEnd.Driven).Count(end => end == TallyEnd.Driving);
}
