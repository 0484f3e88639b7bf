package beltwright.part;

import beltwright.quantity.Dimension;

/// A cover over drive pulley and belt, screwed to the outer face of the mount's plate. Its wall runs around the
/// motor axis, its arms follow the belt towards the axle and end open; its face lies between drive pulley and wheel.
public record Cover(
        Label label,

        @Field(value = "outer face of the plate to the inside of the cover's face", min = 5, max = 120)
        Dimension depthMm,

        @Field(value = "inside of the wall around the motor axis, radius", min = 8, max = 120)
        Dimension radiusMm,

        @Field(value = "thickness of face and wall", min = 0.5, max = 10)
        Dimension wallMm,

        @Field(value = "motor axis to where the wall ends towards the axle", max = 150)
        Dimension reachMm,

        @Field(value = "opening at the lowest point, where stones leave; 0 without one", max = 80)
        Dimension stoneOpeningMm,

        @Field(value = "number of screw holes", max = 12) int screwHoles,

        @Field(value = "circle around the motor axis through those holes", min = 10, max = 200, when = "screwHoles>0")
        Dimension screwCircleMm,

        @Field(value = "thickness that a screw passes through", min = 0.5, max = 40, when = "screwHoles>0")
        Dimension screwGripMm,

        @Field(value = "width of a screw hole", min = 2, max = 12, when = "screwHoles>0")
        Dimension screwHoleMm)
        implements Part {}
