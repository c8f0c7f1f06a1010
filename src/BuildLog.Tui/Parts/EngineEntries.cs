using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class EngineEntries : PartEntries
{
    public override Component New() => new EngineComponent();

    protected override string NameHint => "such as Harrow 2.4 straight four";

    protected override IEnumerable<Entry> Spec(Component part)
    {
        var engine = (EngineComponent)part;
        return
        [
            new TextEntry("idle", "Idle") { Initial = engine.Idle?.Text ?? "", Hint = "such as 800 rpm", Check = Forms.Checks.IfTyped("idle", CruiseGoal.ReadEngineSpeed) },
            new TextEntry("redline", "Redline") { Initial = engine.Redline?.Text ?? "", Hint = "such as 5200 rpm; upshifts in the tables", Check = Forms.Checks.IfTyped("redline", CruiseGoal.ReadEngineSpeed) },
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Source source)
    {
        var engine = (EngineComponent)part;
        engine.Idle = Note(values["idle"], text => Noted.EngineSpeed(text, source));
        engine.Redline = Note(values["redline"], text => Noted.EngineSpeed(text, source));
    }

    protected override Source? SourceOf(Component part) => part is EngineComponent engine ? (engine.Redline ?? engine.Idle)?.Source : null;
}
