namespace BuildLog.Tui.Measurements;

/// <summary>Wheel turns while the vehicle is pushed along; the tape comes afterwards.</summary>
public sealed class RollTally(string part) : TallyModel(part)
{
    private const int BetterTurns = 3;

    public override string Title => Spoken($"Roll out: {Part}");

    public override string HelpPage => "RollOut";

    public override string Driven => Spoken("wheel");

    public override string? Driving => null;

    public override string? NotYet => DrivenTurns == 0 ? Spoken("Roll at least one whole turn first; three or more are better.") : null;

    public override bool IsEnough => DrivenTurns >= BetterTurns;

    public override IReadOnlyList<string> Live => DrivenTurns == 0
        ? [Spoken("Chalk the floor under the tyre's mark. Push; each time the mark is down again, count.")]
        : [Spoken($"Stop with the tyre's mark down and chalk the floor there. Written down as {Reading} and the distance from the first chalk line.")];

    /// <summary>The turns as they are written down; the distance follows.</summary>
    public string Reading => FormattableString.Invariant($"{DrivenTurns}:");
}
