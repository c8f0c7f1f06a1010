using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks how the members of a shaft line lie, and says the joints' angles while it is typed.</summary>
public static class PropshaftAnglesForm
{
    private static IReadOnlyList<(Member Member, string Caption, string Hint)> Asked =>
    [
        (Member.Output, Spoken("Output"), Spoken("such as 3.5 deg")), (Member.Shaft, Spoken("Shaft"), Spoken("along the tube, such as 5 deg")), (Member.Pinion, Spoken("Pinion"), Spoken("such as 3 deg")),
    ];

    /// <param name="shaft">A shaft of one piece.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="known">The session that is put right.</param>
    public static Form For(PropshaftComponent shaft, DateOnly today, Action<Action<ShaftAnglesSession>> save, ShaftAnglesSession? known = null) => new()
    {
        Title = SessionEntries.Title(Spoken("Shaft angles"), shaft.Name, known),
        HelpPage = "PropshaftAngles",
        Cautions = known is null ? Cautions.UnderTheFloor : [],
        SetUp = known is null ? SetUps.PropshaftAngles : [],
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            .. Asked.SelectMany(asked => new[]
            {
                Angle(asked.Member, Seen.Side, Spoken($"{asked.Caption}, side"), Spoken($"{asked.Hint}; front end high is +"), known) with { Check = values => AngleRefusal(values, asked.Member) },
                Angle(asked.Member, Seen.Above, Spoken("  from above"), Spoken("front end right is +; empty where it lies along the vehicle"), known) with { Check = Forms.Checks.IfTyped(Id(asked.Member, Seen.Above), text => Read(asked.Member, Seen.Above, text)) },
            }),
            .. SessionEntries.For(today, known),
        ],
        Echo = values => Parsed.From(() => new Joints(Filled(values, new(shaft)).Result())).Understood(out var joints) ? Says(joints.Of.Front, joints.Of.Rear) : [],
        Save = values => Forms.Checks.Try(() => save(session => SessionEntries.Apply(values, Filled(values, session), today))),
    };

    /// <summary>The joints' angles, and what is left of them together.</summary>
    public static IReadOnlyList<string> Says(JointAngle front, JointAngle rear)
    {
        var (atFront, atRear) = (front.Compound, rear.Compound);
        return
        [
            Spoken($"Front joint {Rounded.WithInterval(atFront, Units.Degree)}, rear joint {Rounded.WithInterval(atRear, Units.Degree)}."),
            Spoken($"They differ by {Rounded.WithInterval(atFront - atRear, Units.Degree)}; alike and with yokes in one plane they cancel."),
        ];
    }

    private static TextEntry Angle(Member member, Seen from, string caption, string hint, ShaftAnglesSession? known) => new(Id(member, from), caption) { Initial = Typed(known, member, from), Hint = hint };

    private static ShaftAnglesSession Filled(FormValues values, ShaftAnglesSession session)
    {
        session.Readings =
        [
            .. Asked.SelectMany(asked => Enum.GetValues<Seen>().Select(from => (Words: AngleReading.Beginning(asked.Member, from), Typed: values[Id(asked.Member, from)])))
                .Where(each => each.Typed.Length > 0).Select(each => $"{each.Words} {each.Typed}"),
        ];
        return session;
    }

    // Before the reader of whole readings is asked, which would speak of words that nobody types here.
    private static string? AngleRefusal(FormValues values, Member member)
        => values.IsEmpty(Id(member, Seen.Side)) ? Spoken("An angle is missing, such as 5 deg.") : Forms.Checks.Needed(Id(member, Seen.Side), text => Read(member, Seen.Side, text))(values);

    private static Parsed<AngleReading> Read(Member member, Seen from, string text) => AngleReading.Read($"{AngleReading.Beginning(member, from)} {text}");

    private static string Typed(ShaftAnglesSession? known, Member member, Seen from)
        => known?.Readings.FirstOrDefault(text => text.StartsWith(AngleReading.Beginning(member, from), StringComparison.OrdinalIgnoreCase))?[AngleReading.Beginning(member, from).Length..].Trim() ?? "";

    private static string Id(Member member, Seen from) => AngleReading.Beginning(member, from).Replace(' ', '-');

    private sealed record Joints((JointAngle Front, JointAngle Rear) Of);
}
