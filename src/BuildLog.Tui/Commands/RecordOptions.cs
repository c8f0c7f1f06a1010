using System.CommandLine;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;
namespace BuildLog.Tui.Commands;
internal sealed class RecordOptions(string w)
{
    public void AddTo(Command c) { _ = w; _ = c; }
    #pragma warning disable CA1822
    public void SaveTurnCount(Edge e, ParseResult p, Wheels w2, string[] c, string? r, string? a) { }
    #pragma warning disable CA1822
    public void SaveRollOut(Edge e, ParseResult p, RollOutPrecision how, string[] c, string? t, string? r, string? a) { }
}
