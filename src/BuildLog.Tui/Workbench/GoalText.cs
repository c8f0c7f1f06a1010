using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>What the goal page says.</summary>
internal static class GoalText
{
    public static IReadOnlyList<TextLine> Of(GoalModel goal)
    {
        if (goal.Wants.Count == 0)
        {
            return
            [
                TextLine.Of(Spoken("No goal yet."), Tone.Strong),
                TextLine.Empty,
                Spoken("Say at which road speed you want to cruise and how fast the engine may turn then."),
                Spoken("Everything else is judged against it. Press g."),
            ];
        }

        var lines = new List<TextLine> { TextLine.Of(Spoken("What the owner wants"), Tone.Heading) };
        lines.AddRange(goal.Wants.Select(line => TextLine.Of("  " + line)));
        if (goal.Follows.Count > 0)
        {
            lines.Add(TextLine.Empty);
            lines.Add(TextLine.Of(Spoken("What follows for the parts"), Tone.Heading));
            lines.AddRange(goal.Follows.Select(line => TextLine.Of("  " + line)));
        }

        return lines;
    }
}
