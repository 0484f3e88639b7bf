package beltwright.part;

import beltwright.quantity.Dimension;

/// A hanger with an axle at each end, its section centred on the axle line, and the baseplate that holds it under the
/// deck. The end face is where the axle steps down.
public record Hanger(
        Label label,

        @Field(value = "end face to end face", min = 60, max = 400)
        Dimension widthMm,

        @Field(value = "axle diameter where the bearings run", min = 5, max = 20)
        Dimension axleDiameterMm,

        @Field(value = "end face to axle end", min = 20, max = 150)
        Dimension axleLengthMm,

        Thread axleThread,

        @Field(value = "threaded length from the axle end", min = 3, max = 80)
        Dimension axleThreadLengthMm,

        Section section,

        @Field(value = "section height where the mount clamps", min = 8, max = 60)
        Dimension sectionHeightMm,

        @Field(
                value = "section depth, fore and aft, where the mount clamps",
                min = 8,
                max = 60,
                when = "section=rectangular")
        Dimension sectionDepthMm,

        @Field(value = "width of the middle body around the kingpin", min = 10, max = 200)
        Dimension bodyWidthMm,

        @Field(value = "how far the middle body reaches fore and aft of the axle line", min = 5, max = 120)
        Dimension bodyReachMm,

        @Field(value = "circle through the threaded holes of its flange; unknown without a flange", min = 10, max = 100)
        Dimension flangeCircleMm,

        @Field(value = "number of those holes", max = 12, when = "flangeCircleMm>0")
        int flangeHoles,

        @Field(value = "end face inward to the face of the flange", max = 150, when = "flangeHoles>0")
        Dimension flangeInsetMm,

        @Field(value = "thread of those holes", when = "flangeHoles>0")
        Thread flangeThread,

        @Field(value = "depth of those holes", min = 2, max = 60, when = "flangeHoles>0")
        Dimension flangeThreadDepthMm,

        @Field(value = "steering axis above the baseplate, fore and aft", min = 20, max = 80, group = Field.Group.BOARD)
        Dimension steeringAxisDeg,

        @Field(
                value = "its family; how it turns say steering axis and rake, and the link of a double one",
                when = "steeringAxisDeg>0",
                group = Field.Group.BOARD)
        Kingpin kingpin,

        @Field(
                value = "steering axis to axle line; negative where the axle lies towards the board's end",
                min = -60,
                max = 60,
                group = Field.Group.BOARD)
        Dimension rakeMm,

        @Field(
                value = "between the two steering axes",
                min = 5,
                max = 80,
                when = "kingpin=double",
                group = Field.Group.BOARD)
        Dimension linkMm,

        @Field(
                value = "face of the baseplate to the axle line, at rest",
                min = 20,
                max = 150,
                group = Field.Group.BOARD)
        Dimension axleDropMm,

        @Field(
                value = "middle of the baseplate holes to the axle line, towards the board's end",
                min = -60,
                max = 80,
                group = Field.Group.BOARD)
        Dimension axleFromBaseMm,

        @Field(value = "lean of the deck when the bushings are pressed together", max = 60, group = Field.Group.BOARD)
        Dimension fullLeanDeg,

        @Field(
                value = "how far the axle comes up when the bushings give under a landing",
                max = 20,
                group = Field.Group.BOARD)
        Dimension bushingTravelMm,

        @Field(value = "baseplate holes, along the board", min = 20, max = 120, group = Field.Group.BOARD)
        Dimension baseLengthMm,

        @Field(value = "baseplate holes, across the board", min = 20, max = 120, group = Field.Group.BOARD)
        Dimension baseWidthMm,

        @Field(value = "baseplate thickness at its holes", min = 2, max = 20, group = Field.Group.BOARD)
        Dimension baseThicknessMm,

        @Field(value = "material of the hanger", optional = true)
        String material,

        @Field(value = "fillet radius where the axle steps up to the end face", max = 10, group = Field.Group.STRENGTH)
        Dimension axleFilletMm,

        @Field(
                value = "material of the axle where it is not the hanger's",
                optional = true,
                group = Field.Group.STRENGTH)
        String axleMaterial,

        @Field(
                value = "number of dowel holes for a mount at one end, 0 without",
                max = 12,
                optional = true,
                group = Field.Group.STRENGTH)
        int dowelHoles,

        @Field(
                value = "diameter of those holes",
                min = 1.5,
                max = 12,
                when = "dowelHoles>0",
                group = Field.Group.STRENGTH)
        Dimension dowelMm,

        @Field(value = "depth of those holes", min = 1, max = 60, when = "dowelHoles>0", group = Field.Group.STRENGTH)
        Dimension dowelHoleDepthMm)
        implements Part {
    /// How the hanger steers: one steering axis with the bushings outside or around the kingpin, or two of them.
    public enum Kingpin {
        REVERSE("reverse"),
        DOUBLE("double"),
        TRADITIONAL("traditional");

        private final String words;

        Kingpin(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// The outline of the hanger where a mount clamps.
    public enum Section {
        ROUND("round"),
        RECTANGULAR("rectangular");

        private final String words;

        Section(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }
}
