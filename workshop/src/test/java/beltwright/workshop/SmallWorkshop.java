package beltwright.workshop;

import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import java.util.List;

/// A handful of invented documents: one motor, one pulley, two belts, a kit draft with its seats half filled, and
/// measurements of the motor.
final class SmallWorkshop {
    static final String TEXT = """
            schema: 1
            part: motor-50
            kind: motor
            name: Outrunner 50 x 60
            revision: A
            source: data sheet, invented
            dimensions:
              canDiameterMm: 50 ±0.2
              canLengthMm: {value: 60, source: estimate}
              shaftForm: D
              shaftDiameterMm: 8 h6
              boltHoles: 4
              thread: M4
              threadMaterial: aluminium-6061-t6
              resistanceIs: line to line
              wireExit: side
            ---
            schema: 1
            part: pulley-16
            kind: drive pulley
            name: Sixteen teeth
            revision: A
            source: measured, caliper
            dimensions:
              rim: {profile: 5M H, teeth: 16, faceWidthMm: 16 ±0.1, flanges: both}
              boreForm: D
              boreDiameterMm: 8 H7
              hubSide: wheel
              setScrews: 2
              setScrewThread: M4
            ---
            schema: 1
            part: belt-305-15
            kind: belt
            name: Belt 305
            revision: A
            source: data sheet, invented
            dimensions: {profile: 5M H, teeth: 61, widthMm: 15, lengthDeviationMm: 0 ±0.2}
            ---
            schema: 1
            part: belt-325-15
            kind: belt
            name: Belt 325
            revision: A
            source: data sheet, invented
            dimensions: {profile: 5M H, teeth: 65, widthMm: 15, lengthDeviationMm: 0 ±0.2}
            ---
            schema: 1
            measurement: motor-early
            of: motor-50
            by: workshop
            with: caliper
            when: 2026-10-01
            values: {canDiameterMm: 50.3, shaftDiameterMm: 7.99}
            ---
            schema: 1
            measurement: motor-late
            of: motor-50
            by: workshop
            with: caliper
            when: 2026-10-02
            values: {canDiameterMm: 50.4 ±0.05}
            """;

    private static final String KIT = """
            ---
            schema: 1
            kit: short-street
            name: Short Street
            invented: true
            seats:
              left motor: motor-50
              left belt: belt-305-15
              left drive pulley: pulley-16
            joints:
              pulley on motor: {by: set screws, of: [left drive pulley, left motor]}
            placements:
              left: {source: "measured, rule", motor: ahead, aboveAxleDeg: 18, plateInsetMm: 2}
            task: {source: "estimate, common practice", gradePercent: 15, allUpMassKg: {value: 95, source: said by a customer}}
            """;

    private SmallWorkshop() {}

    /// The kit lacks seats, so it is a draft that an import would refuse.
    static List<Document> documents() {
        return Codec.read("small.yaml", TEXT + KIT).orRefuse();
    }
}
