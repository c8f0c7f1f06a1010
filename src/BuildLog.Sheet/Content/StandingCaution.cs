namespace BuildLog.Sheet.Content;

/// <summary>The caution that every sheet carries unless the caller words its own.</summary>
public static class StandingCaution
{
    public static string LocalRulesComeFirst =>
        Spoken("This sheet records what was measured and what follows from it. It is not an approval: local rules, inspection " +
        "and the judgement of a licensed engineer come first.");
}
