using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Plans;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Plans;

/// <summary>A vehicle as a plan or a what-if would have it; nothing is fitted and nothing is stored.</summary>
internal static class PlannedDriveline
{
    /// <summary>Typed for going without a part.</summary>
    public static string None => Spoken("none");

    private static string Name => Spoken("what if");

    /// <summary>It takes a part off and fits none.</summary>
    public static bool IsNone(this PlannedChange change) => change.ComponentId is null && IsNone(change.Listed);

    // A plan may be read in either language.
    private static bool IsNone(string text) => ((string[])[None, "none"]).Contains(text.Trim(), StringComparer.OrdinalIgnoreCase);

    /// <summary>The vehicle with the changes made and judged again.</summary>
    /// <exception cref="RefusedException">A text means nothing, or a part of the shop is gone.</exception>
    public static VehicleOnBench With(this VehicleOnBench bench, Shop shop, IReadOnlyList<PlannedChange> changes)
    {
        var driveline = bench.Driveline.With(shop, changes);
        return bench with { Fitted = bench.Fitted with { Driveline = driveline }, Findings = AllChecks.Look(driveline, bench.Goals) };
    }

    /// <summary>The parts with the changes made; the other axle of a four-wheel drive is geared alike with the driving one where nothing is said of it, as in a search.</summary>
    /// <exception cref="RefusedException">A text means nothing, or a part of the shop is gone.</exception>
    public static Driveline With(this Driveline driveline, Shop shop, IReadOnlyList<PlannedChange> changes)
    {
        var before = driveline;
        foreach (var change in changes)
        {
            driveline = change.ComponentId is { } id
                ? shop.Trying(driveline, change.Position, [Part(shop, id)])[0]
                : Read(driveline, change.Position, change.Listed).OrRefuse();
        }

        return BothAxles.Completed(before, driveline);
    }

    /// <summary>A driveline with one part as told: the listed one where the text is one's, the offered one where it is claimed, else what was typed.</summary>
    public static Parsed<Driveline> Read(Driveline driveline, Position position, string text)
    {
        if (Listed(driveline, position, text) is { } listed) return listed;
        if (PlannedOffer.Read(text) is { } offer) return Offered(driveline, position, offer);

        if (TriedNumbers.Parted(position, text) is { Named: { Count: > 0 } named, Others: var others })
            return (others.Length > 0 ? Read(TriedNumbers.Freed(driveline, named), position, others) : driveline).Then(whole => TriedNumbers.Put(whole, named));

        if (IsNone(text)) return driveline.Without(position);

        return position switch
        {
            Position.Engine => Engine(driveline.Engine ?? new(Name), text).Then<Driveline>(engine => driveline with { Engine = engine }),
            Position.Transmission => TriedGearbox.Read(text, Named(driveline.Transmission?.Name), driveline.Transmission).Then<Driveline>(box => driveline with { Transmission = box }),
            Position.Overdrive => ToldPart.Overdrive(text, Named(driveline.Overdrive?.Name)).Then<Driveline>(unit => driveline with { Overdrive = unit }),
            Position.TransferCase => TriedTransferCase.Read(text, Name, driveline.TransferCase).Then<Driveline>(box => driveline with { TransferCase = box }),
            Position.Propshaft => TriedPropshaft.Read(text, Named(driveline.Propshaft?.Name), driveline.Propshaft).Then<Driveline>(shaft => driveline with { Propshaft = shaft }),
            Position.FrontPropshaft => TriedPropshaft.Read(text, Named(driveline.FrontPropshaft?.Name), driveline.FrontPropshaft).Then<Driveline>(shaft => driveline with { FrontPropshaft = shaft }),
            Position.RearAxle => ToldPart.Axle(text, Named(driveline.RearAxle?.Name), driveline.RearAxle).Then<Driveline>(axle => driveline with { RearAxle = axle }),
            Position.FrontAxle => ToldPart.Axle(text, Named(driveline.FrontAxle?.Name), driveline.FrontAxle).Then<Driveline>(axle => driveline with { FrontAxle = axle }),
            Position.Tyres => ToldPart.Tyres(text, Named(driveline.Tyres?.Name), driveline.Tyres).Then<Driveline>(tyres => driveline with { Tyres = tyres }),
            Position.FrontTyres => ToldPart.Tyres(text, Named(FrontTyres(driveline)?.Name), FrontTyres(driveline)).Then<Driveline>(tyres => InFront(driveline, tyres)),
            Position.Speedometer => TriedSpeedometer.Read(text, Named(driveline.Speedometer?.Name), driveline.Speedometer).Then<Driveline>(meter => driveline with { Speedometer = meter }),
            _ => new Refusal("position", Spoken($"The {position.InWords()} has no number to try here."), ""),
        };
    }

    private static Driveline? Listed(Driveline driveline, Position position, string text) => position switch
    {
        Position.Transmission when driveline.Transmission is { } box && ListedParts.Gearboxes(box).Called(text) is { } listed => driveline with { Transmission = listed },
        Position.RearAxle when driveline.RearAxle is { } axle && ListedParts.Axles(axle).Called(text) is { } listed => driveline with { RearAxle = listed },
        Position.FrontAxle when driveline.FrontAxle is { } axle && ListedParts.Axles(axle).Called(text) is { } listed => driveline with { FrontAxle = listed },
        Position.FrontTyres when FrontTyres(driveline) is { } tyres && ListedParts.Tyres(tyres, OwnersGoals.None).Called(text) is { } listed => InFront(driveline, listed),
        Position.Tyres when driveline.Tyres is { } tyres && ListedParts.Tyres(tyres, OwnersGoals.None).Called(text) is { } listed => driveline with { Tyres = listed },
        _ => null,
    };

    private static Parsed<Driveline> Offered(Driveline driveline, Position position, PlannedOffer offer) => position switch
    {
        Position.Transmission => ToldPart.Gearbox(offer.Claim, offer.What, driveline.Transmission).Then<Driveline>(box => driveline with { Transmission = box }),
        Position.Overdrive => ToldPart.Overdrive(offer.Claim, offer.What).Then<Driveline>(unit => driveline with { Overdrive = unit }),
        Position.RearAxle => ToldPart.Axle(offer.Claim, offer.What, driveline.RearAxle).Then<Driveline>(axle => driveline with { RearAxle = axle }),
        Position.FrontAxle => ToldPart.Axle(offer.Claim, offer.What, driveline.FrontAxle).Then<Driveline>(axle => driveline with { FrontAxle = axle }),
        Position.Tyres => ToldPart.Tyres(offer.Claim, offer.What, driveline.Tyres).Then<Driveline>(tyres => driveline with { Tyres = tyres }),
        _ => new Refusal("position", Spoken($"No {position.InWords()} is offered by a number."), ""),
    };

    private static TyreSet? FrontTyres(Driveline driveline) => driveline.Tyres?.On(Position.FrontAxle) ?? driveline.LoneFrontTyres;

    private static Driveline InFront(Driveline driveline, TyreSet tyres)
        => driveline.Tyres is { } rear ? driveline with { Tyres = rear with { FrontPair = tyres with { FrontPair = null } } } : driveline with { LoneFrontTyres = tyres };

    // A redline, points of a torque curve, or both: what holds a colon is a point, and the air that points were read in belongs to them.
    private static Parsed<Engine> Engine(Engine engine, string text)
    {
        var parts = NamedNumbers.Parted(text);
        var torque = parts.Where(part => part.Contains(':', StringComparison.Ordinal) || part.StartsWith("air ", StringComparison.OrdinalIgnoreCase)).ToList();
        var redlines = parts.Except(torque).ToList();
        if (redlines.Count > 1)
            return new Refusal("engine", Spoken($"{Shown.Quoted(redlines[1])} is a second redline: type one, and points of the torque curve with a colon."), "5200 rpm; 1500:180 Nm; 3000:210 Nm");

        if (redlines is [var top])
        {
            var read = CruiseGoal.ReadEngineSpeed(top);
            if (!read.Understood(out var redline)) return read.Refusal!;
            engine = engine with { Redline = new(redline.ToMeasured(Spoken("redline")), Source.OwnersWord, redline.InWords) };
        }

        return torque.Count == 0
            ? engine
            : Parsed.From(() => TorqueText.Curve(string.Join("; ", torque), Source.OwnersWord)).Then<Engine>(curve => engine with { Torque = curve });
    }

    private static Component Part(Shop shop, long id)
        => shop.Parts().FirstOrDefault(part => part.Component.Id == id)?.Component ?? throw new RefusedException("plan", Spoken("A part of this plan is gone from the record."), "");

    private static string Named(string? fitted) => fitted is null ? Name : $"{Name}: {fitted}";
}
