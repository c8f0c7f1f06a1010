using BuildLog.Data.Components;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>What a form asks of one kind of part. A new kind of part is a new file here and a line in <see cref="For"/>.</summary>
public abstract class PartEntries
{
    /// <summary>The asker for what may sit in a position.</summary>
    public static PartEntries For(Position position) => position switch
    {
        Position.Engine => new EngineEntries(),
        Position.Transmission => new TransmissionEntries(),
        Position.Overdrive => new OverdriveEntries(),
        Position.TransferCase => new TransferCaseEntries(),
        Position.RearAxle or Position.FrontAxle => new AxleEntries(),
        Position.Tyres or Position.FrontTyres => new WheelSetEntries(),
        Position.Propshaft or Position.FrontPropshaft => new PropshaftEntries(),
        Position.Speedometer => new SpeedometerEntries(),
        _ => throw new ArgumentOutOfRangeException(nameof(position), position, "No such position."),
    };

    public abstract Component New();

    /// <summary>Name, spec, origin: everything a part's form asks.</summary>
    public IReadOnlyList<Entry> Entries(Component part)
    {
        // Whoever saves has every entry checked on the same values: the part is tried once for all of them.
        (FormValues? On, Refusal? Refused) tried = default;
        return [.. Asked(part).Select(entry => entry with { Check = values => entry.Check?.Invoke(values) ?? (Tried(values) is { } refused && entry.IsAbout(refused.Code) ? refused.Sentence : null) })];

        Refusal? Tried(FormValues values)
        {
            if (!ReferenceEquals(tried.On, values)) tried = (values, RefusedOf(values));
            return tried.Refused;
        }
    }

    private IEnumerable<Entry> Asked(Component part) =>
    [
        new TextEntry("part", Spoken("Name")) { AnswersFor = ["component"], Initial = part.Name, Hint = NameHint, Check = Forms.Checks.Filled("part", Spoken($"The {part.Kind} needs a name, {NameHint}.")) },
        Telling.Entry(Known(part), Spoken("how the numbers below are known; an advert is only word")),
        .. SpecEntries(part),
        new TextEntry("serial", Spoken("Number on it")) { Initial = part.SerialNumber },
        new TextEntry("donor", Spoken("From")) { IsRemembered = true, Initial = part.Donor, Hint = Spoken("donor vehicle, yard or seller") },
    ];

    // What the record would refuse of the part as typed so far.
    private Refusal? RefusedOf(FormValues values)
    {
        try
        {
            var part = New();
            Apply(values, part);
            part.Check();
            return null;
        }
        catch (RefusedException refused)
        {
            return refused.Refusal;
        }
    }

    /// <summary>Puts what was typed into the part.</summary>
    /// <exception cref="RefusedException">A text is refused.</exception>
    public void Apply(FormValues values, Component part)
    {
        part.Name = values["part"];
        part.SerialNumber = values["serial"];
        part.Donor = values["donor"];
        ApplySpec(values, part, Telling.Of(values, Known(part)));
    }

    /// <summary>What is said of the part as typed so far; nothing while that is no part yet.</summary>
    public IReadOnlyList<string> Said(FormValues values, Component part, Func<Component, IReadOnlyList<string>> says)
    {
        try
        {
            Apply(values, part);
            return says(part);
        }
        catch (RefusedException)
        {
            return [];
        }
    }

    protected abstract string NameHint { get; }

    protected abstract IEnumerable<Entry> SpecEntries(Component part);

    protected abstract void ApplySpec(FormValues values, Component part, Telling told);

    /// <summary>How the first of the numbers that such a part always has is known.</summary>
    protected abstract Source? SourceOf(Component part);

    private Source? Known(Component part) => SourceOf(part) ?? part.OtherNumbersKnownFrom;

    /// <summary>A choice that may stay open.</summary>
    protected static ChoiceEntry Choice<TWords>(string id, string caption, string notSaid, TWords? now, params (TWords Value, string Words)[] options)
        where TWords : struct, Enum
        => new(id, caption, [new("", notSaid), .. options.Select(option => new ChoiceOption(option.Value.ToString(), option.Words))]) { Initial = now?.ToString() ?? "" };

    /// <summary>Whether a part that a driveline needs somewhere is on this one.</summary>
    protected static ChoiceEntry Present(string id, string caption, Presence? now) => Choice(id, caption, Spoken("not looked at"), now, (Presence.Fitted, Spoken("there")), (Presence.Absent, Spoken("none")));

    protected static ChoiceEntry SpeedometerFeedEntry(string id, string caption, SpeedometerFeed? now)
        => Choice(id, caption, Spoken("not looked at"), now, (SpeedometerFeed.Cable, Spoken("for a cable")), (SpeedometerFeed.Pulses, Spoken("a sender's pulses")), (SpeedometerFeed.None, Spoken("none")));

    /// <summary>What was chosen, or null where it stayed open.</summary>
    protected static TWords? Chosen<TWords>(string text)
        where TWords : struct, Enum
        => Enum.TryParse<TWords>(text, out var value) ? value : null;
}
