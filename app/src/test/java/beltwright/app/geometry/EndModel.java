package beltwright.app.geometry;

import beltwright.kit.Kit;
import beltwright.kit.WheelEnd;

/// One end of the axle, stacked up from its parts; everything in mm outward from the hanger's end face.
final class EndModel {
    final Kit kit;
    final WheelEnd end;
    final Draw draw;
    final double spacerTo;
    final double ringTo;
    final double innerBearingTo;
    final double coreSpacerTo;
    final double outerBearingTo;
    final double outerRingTo;
    final double stackTo;
    final double nutTo;
    final double axleTo;
    final double threadFrom;
    final double treadFrom;
    final double treadTo;
    final double seat;
    final double wheelRadius;
    final double wornRadius;

    EndModel(Kit kit, WheelEnd end, Draw draw) {
        this.kit = kit;
        this.end = end;
        this.draw = draw;
        spacerTo = end.spacer().blank() ? 0 : draw.of(end.spacer().lengthMm());
        ringTo = spacerTo + draw.of(end.innerRing().lengthMm());
        innerBearingTo = ringTo + draw.of(end.innerBearing().widthMm());
        coreSpacerTo = innerBearingTo + draw.of(end.coreSpacer().lengthMm());
        outerBearingTo = coreSpacerTo + draw.of(end.outerBearing().widthMm());
        outerRingTo = outerBearingTo + draw.of(end.outerRing().lengthMm());
        stackTo = outerRingTo + (end.washer().blank() ? 0 : draw.of(end.washer().thicknessMm()));
        nutTo = stackTo + draw.of(end.nut().heightMm());
        axleTo = draw.of(kit.hanger().axleLengthMm());
        threadFrom = axleTo - draw.of(kit.hanger().axleThreadLengthMm());
        // the inner bearing rests on its shoulder, and the tread lies about the middle between both shoulders
        double middle = innerBearingTo + draw.of(end.wheel().coreSpacingMm()) / 2;
        double width = draw.of(end.wheel().widthMm());
        treadFrom = middle + draw.of(end.wheel().coreOffsetMm()) - width / 2;
        treadTo = treadFrom + width;
        seat = treadFrom + draw.of(end.wheel().coreFaceInsetMm());
        wheelRadius = draw.of(end.wheel().diameterMm()) / 2;
        wornRadius = draw.of(end.wheel().wornDiameterMm()) / 2;
    }

    Solid wheel() {
        return new Solid("wheel", Outline.circle(0, 0, wheelRadius), treadFrom, treadTo);
    }
}
