package beltwright.layout;

import beltwright.kit.Side;
import beltwright.quantity.Range;

/// One drive solved in space.
///
/// In the side view the axle is the origin, x forward, z up. Axially every station is measured outward from the
/// hanger's end face on this side, so that the hanger's width stays out of the chains.
///
/// @param closed whether a centre distance exists for this belt and these pulleys; where not, the motor is drawn at
///     the middle of the slot
/// @param centreDistanceMm axle to motor axis with the belt taut
/// @param slotPositionMm how far the motor stands from the near end of the slot
/// @param slotTravelLeftMm how far it can still move away from the axle
/// @param teethInMesh on the drive pulley, fractions too
/// @param wrapDeg belt wrap on the drive pulley
/// @param spanMm free span, tangent point to tangent point, on the side without an idler
/// @param idlerXMm idler ahead of the axle; NaN without one
public record DriveLayout(
        Side side,
        boolean closed,
        Range centreDistanceMm,
        Range slotPositionMm,
        Range slotTravelLeftMm,
        Range teethInMesh,
        double wrapDeg,
        double spanMm,
        double motorXMm,
        double motorZMm,
        double idlerXMm,
        double idlerZMm,
        Range plateOuterMm,
        Range plateInnerMm,
        Range motorEndMm,
        Range shaftEndMm,
        Range drivePulleyNearMm,
        Range driveRimMiddleMm,
        Range drivePulleyFarMm,
        Range wheelRimNearMm,
        Range wheelRimMiddleMm,
        Range wheelRimFarMm,
        Range pulleySeatMm) {}
