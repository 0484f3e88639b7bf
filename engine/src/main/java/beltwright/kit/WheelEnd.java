package beltwright.kit;

import beltwright.part.Bearing;
import beltwright.part.Nut;
import beltwright.part.Sleeve;
import beltwright.part.Washer;
import beltwright.part.Wheel;

/// One end of the axle with everything on it, from the hanger's end face out to the nut.
public record WheelEnd(
        Side side,
        Wheel wheel,
        Bearing innerBearing,
        Bearing outerBearing,
        Sleeve coreSpacer,
        Sleeve innerRing,
        Sleeve outerRing,
        Sleeve spacer,
        Washer washer,
        Nut nut) {}
