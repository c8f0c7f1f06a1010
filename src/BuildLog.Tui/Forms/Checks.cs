using BuildLog.Data.Files;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Forms;

/// <summary>Checks of one entry by the readers of the engine: what they refuse is the message.</summary>
public static class Checks
{
    /// <summary>The text must be understood.</summary>
    public static Func<FormValues, string?> Needed<T>(string id, Func<string, Parsed<T>> read)
        where T : notnull
        => values => read(values[id]).Refusal?.Sentence;

    /// <summary>The text must be understood, unless there is none.</summary>
    public static Func<FormValues, string?> IfTyped<T>(string id, Func<string, Parsed<T>> read)
        where T : notnull
        => values => values.IsEmpty(id) ? null : read(values[id]).Refusal?.Sentence;

    /// <summary>The same, and then it must be possible beside the other answers of the form.</summary>
    public static Func<FormValues, string?> IfTyped<T>(string id, Func<string, Parsed<T>> read, Func<FormValues, string?>? beside)
        where T : notnull
        => values => IfTyped(id, read)(values) ?? beside?.Invoke(values);

    /// <summary>Something must be typed.</summary>
    public static Func<FormValues, string?> Filled(string id, string sentence) => values => values.IsEmpty(id) ? sentence : null;

    /// <summary>The outcome of a save that may be refused: the sentence stands beside the entry it is about or else the form, and what was typed stays.</summary>
    public static SaveOutcome Try(Action save)
    {
        try
        {
            save();
            return SaveOutcome.Done;
        }
        catch (RefusedException refused)
        {
            return SaveOutcome.Refuse(refused.Refusal);
        }
        catch (RecordException record)
        {
            return record.Fault is Fault.ChangedSince or Fault.Refused ? SaveOutcome.Refuse(record.Message) : SaveOutcome.NotNow(record.Message);
        }
    }
}
