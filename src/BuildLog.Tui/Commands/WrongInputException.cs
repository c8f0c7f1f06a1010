using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary>Something typed on the command line was refused; names the option, so that the person knows where.</summary>
internal sealed class WrongInputException(Refusal refusal, string? option) : Exception(refusal.Message)
{
    public Refusal Refusal { get; } = refusal;

    public string? Option { get; } = option;
}
