using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>Where a wheel stands under the body.</summary>
/// <remarks>
/// <code>
/// backspace = (W + 1 in) / 2 + ET
/// track = hub faces − 2 · ET,   change = 2 · (ET_old − ET_new) + change of the hub faces
/// outer edge = W / 2 − ET,   inner edge = W / 2 + ET, from the mounting face
/// </code>
/// <para>W rim width between bead seats; ET offset, positive where the mounting face is outboard of the rim's middle; all in metres.</para>
/// <para>The inch on the backspace is the two rim flanges, half an inch each, from memory: measure it where a centimetre matters. Source: geometry.</para>
/// </remarks>
public static class WheelPlace
{
    private const double Flanges = 0.0254;

    /// <summary>Mounting face to the inner edge of the rim.</summary>
    public static Measured Backspace(Measured rimWidth, Measured offset) => ((rimWidth + Flanges) * 0.5) + offset;

    /// <summary>ET, metres, positive where the mounting face is outboard of the rim's middle.</summary>
    public static Measured OffsetFromBackspace(Measured rimWidth, Measured backspace) => backspace - ((rimWidth + Flanges) * 0.5);

    /// <summary>Tyre middle to tyre middle.</summary>
    /// <param name="hubFaces">Mounting face to mounting face of the axle.</param>
    /// <param name="offset">Of the wheels.</param>
    public static Measured Track(Measured hubFaces, Measured offset) => hubFaces - (2 * offset);

    /// <summary>Metres that the track grows by; negative where it gets narrower.</summary>
    public static Measured TrackChange(Measured oldOffset, Measured newOffset, Measured oldHubFaces, Measured newHubFaces)
        => (2 * (oldOffset - newOffset)) + (newHubFaces - oldHubFaces);

    /// <summary>By how much the tyre's outer side wall moves out, its width and offset changing.</summary>
    public static Measured OuterEdgeMoves(Measured widthChange, Measured offsetChange) => (widthChange * 0.5) - offsetChange;

    /// <summary>By how much the inner side wall moves in, towards the springs.</summary>
    public static Measured InnerEdgeMoves(Measured widthChange, Measured offsetChange) => (widthChange * 0.5) + offsetChange;
}
