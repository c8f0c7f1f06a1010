using System.CommandLine;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog paper KIND</c>: the other papers, each a command of its own below this one.</summary>
internal sealed class PaperCommand : Command
{
    public PaperCommand(Edge edge) : base("paper", Spoken("Write one of the other papers as PDF: order, compare, session, time, costs or labels."))
    {
        Subcommands.Add(new OrderPaperCommand(edge));
        Subcommands.Add(new ComparePaperCommand(edge));
        Subcommands.Add(new SessionPaperCommand(edge));
        Subcommands.Add(AccountPaperCommand.Time(edge));
        Subcommands.Add(AccountPaperCommand.Costs(edge));
        Subcommands.Add(new LabelsPaperCommand(edge));
    }
}
