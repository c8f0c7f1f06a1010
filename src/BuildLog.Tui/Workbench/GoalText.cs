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
                TextLine.Of("No goal yet.", Tone.Strong),
                TextLine.Empty,
                "Say at which road speed you want to cruise and how fast the engine may turn then.",
                "Everything else is judged against it. Press g.",
            ];
        }

        var lines = new List<TextLine> { TextLine.Of("What the owner wants", Tone.Heading) };
        lines.AddRange(goal.Wants.Select(line => TextLine.Of("  " + line)));
        if (goal.Follows.Count > 0)
        {
            lines.Add(TextLine.Empty);
            lines.Add(TextLine.Of("What follows for the parts", Tone.Heading));
            lines.AddRange(goal.Follows.Select(line => TextLine.Of("  " + line)));
        }

        return lines;
    }
}
