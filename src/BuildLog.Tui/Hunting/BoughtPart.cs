using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Tui.Hunting;

/// <summary>A part as it comes home: of the kind that was hunted, with what was claimed of it, which is somebody's word until it is counted or measured.</summary>
internal static class BoughtPart
{
    /// <returns>Null for what is no part with a history.</returns>
    public static Component? New(WantedKind kind) => kind switch
    {
        WantedKind.Engine => new EngineComponent(),
        WantedKind.Transmission => new TransmissionComponent(),
        WantedKind.Overdrive => new OverdriveComponent(),
        WantedKind.TransferCase => new TransferCaseComponent(),
        WantedKind.Propshaft => PropshaftComponent.Unmeasured(),
        WantedKind.Axle => new AxleComponent(),
        WantedKind.Tyres or WantedKind.Wheels => new WheelSetComponent(),
        WantedKind.Speedometer => new SpeedometerComponent(),
        WantedKind.Other => null,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    /// <summary>Whether a claim about such a part is a number of it.</summary>
    public static bool HasClaim(WantedKind kind) => New(kind) is AxleComponent or TransmissionComponent or OverdriveComponent or WheelSetComponent;

    /// <summary>Puts a claim into the part.</summary>
    /// <exception cref="RefusedException">The claim is no number of such a part.</exception>
    public static void Put(Component part, string claimed)
    {
        switch (part)
        {
            case AxleComponent axle:
                axle.StatedRatio = Noted.Ratio(claimed, RatioRange.Axle, Source.OwnersWord);
                break;
            case OverdriveComponent unit:
                unit.OverdriveRatio = Noted.Overdrive(claimed, Source.OwnersWord);
                break;
            case TransmissionComponent box:
                box.Gears = [.. ToldGears.Read(claimed).OrRefuse().Told.Select((gear, k) => new StatedGear(gear.Name.Length > 0 ? gear.Name : FormattableString.Invariant($"{k + 1}"), Noted.Ratio(gear.Text, RatioRange.Gear, Source.OwnersWord)))];
                break;
            case WheelSetComponent wheels when QuantityText.Read(claimed, Kind.Length).Understood(out _):
                wheels.StatedCircumference = Noted.Length(claimed, Source.OwnersWord);
                break;
            case WheelSetComponent wheels:
                (wheels.SizeText, wheels.Construction) = (claimed, TyreSizeText.Read(claimed).OrRefuse().Construction);
                break;
        }
    }

    /// <summary>The part that an offer became, by its name and the day it was bought; null where the hunt goes on or it was another.</summary>
    public static PartPlace? Of(Shop shop, WantedPart wanted, Offer offer)
        => wanted.State != WantedState.Found ? null
            : shop.Parts().FirstOrDefault(place => place.Component.Bought is not null && place.Component.Name == offer.What && place.Component.GetType() == New(wanted.Kind)?.GetType());

    /// <summary>The part that an offer was counted on in the yard, which is in the record for that count already; null where there is none.</summary>
    public static Component? Counted(Shop shop, WantedPart wanted, Offer? offer)
        => offer is null ? null : YardCount.Of(shop, wanted).FirstOrDefault(count => count.IsOf(offer))?.Part;
}
