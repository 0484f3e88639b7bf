package beltwright.layout;

import beltwright.kit.Side;
import beltwright.quantity.Range;

/// One end of the axle solved along its line, outward from the hanger's end face.
///
/// @param ringOuterMm outer face of the inner speed ring, where the inner bearing begins
/// @param innerBearingOuterMm outer face of the inner bearing
/// @param coreMiddleMm middle of the wheel's core spacing
/// @param wheelInnerMm inner edge of the tread
/// @param wheelOuterMm outer edge of the tread
/// @param stackMm end face to the inner face of the nut
/// @param threadBeginsMm where the axle's thread begins
/// @param threadPastNutMm axle end beyond the nut
public record EndLayout(
        Side side,
        Range ringOuterMm,
        Range innerBearingOuterMm,
        Range coreMiddleMm,
        Range wheelInnerMm,
        Range wheelOuterMm,
        Range stackMm,
        Range threadBeginsMm,
        Range threadPastNutMm) {}
