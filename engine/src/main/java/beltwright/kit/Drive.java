package beltwright.kit;

import beltwright.part.Belt;
import beltwright.part.Cover;
import beltwright.part.DowelPin;
import beltwright.part.DrivePulley;
import beltwright.part.Idler;
import beltwright.part.Motor;
import beltwright.part.Mount;
import beltwright.part.Screw;
import beltwright.part.ToothedRim;
import beltwright.part.Washer;
import beltwright.part.WheelPulley;

/// One driven side: motor, mount, pulleys, belt, and the wheel end that it turns. A seat that nothing fills holds a
/// blank.
public record Drive(
        Side side,
        Mount mount,
        Screw clampScrew,
        Screw flangeScrew,
        DowelPin dowelPin,
        Motor motor,
        Screw motorScrew,
        Washer motorWasher,
        DrivePulley drivePulley,
        Screw setScrew,
        Screw hubScrew,
        Belt belt,
        WheelPulley wheelPulley,
        Screw pulleyScrew,
        Idler idler,
        Screw idlerScrew,
        Cover cover,
        Screw coverScrew,
        Placement placement,
        WheelEnd end) {

    /// {@return wheel teeth over motor teeth: how much slower the wheel turns}
    public double ratio() {
        return (double) wheelPulley.rim().teeth() / drivePulley.rim().teeth();
    }

    /// {@return whether belt and wheel pulley can go on together, without lifting the belt over a flange}
    public boolean beltSlidesOn() {
        var wheel = wheelPulley.rim().flanges();
        return !drivePulley.rim().flanges().onWheelSide()
                || wheel == ToothedRim.Flanges.NONE
                || wheel == ToothedRim.Flanges.WHEEL_SIDE;
    }

    public SeatName seat(Role role) {
        return new SeatName(side, role);
    }
}
