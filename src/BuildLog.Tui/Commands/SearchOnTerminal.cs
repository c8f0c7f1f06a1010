using System.CommandLine;

namespace BuildLog.Tui.Commands;

/// <summary>A search that a person waits for: says on standard error how far it is once it takes long, and ends on Ctrl+C.</summary>
internal sealed class SearchOnTerminal : IDisposable
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(2);

    private readonly CancellationTokenSource cancel = new();
    private readonly ConsoleCancelEventHandler stop;

    public SearchOnTerminal(Edge edge, ParseResult parse)
    {
        stop = (_, pressed) =>
        {
            pressed.Cancel = true;
            cancel.Cancel();
        };
        Console.CancelKeyPress += stop;
        Progress = parse.GetValue(edge.Common.Json) ? null : new ToldMeanwhile(edge);
    }

    public IProgress<double>? Progress { get; }

    public CancellationToken Cancel => cancel.Token;

    public void Dispose()
    {
        Console.CancelKeyPress -= stop;
        cancel.Dispose();
    }

    // Called from the search's own threads.
    private sealed class ToldMeanwhile(Edge edge) : IProgress<double>
    {
        private readonly Lock once = new();
        private readonly long began = edge.Clock.GetTimestamp();
        private int said;

        public void Report(double value)
        {
            if (edge.Clock.GetElapsedTime(began) < Long) return;
            lock (once)
            {
                var tenths = (int)(value * 10);
                if (tenths <= said) return;
                said = tenths;
                edge.SayMeanwhile(Spoken($"{tenths * 10} % searched; Ctrl+C ends it."));
            }
        }
    }
}
