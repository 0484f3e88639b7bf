package beltwright.part;

import beltwright.quantity.Dimension;

/// A hanger with an axle at each end, its section centred on the axle line. The end face is where the axle steps down.
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

        @Field(value = "section depth, fore and aft, where the mount clamps", min = 8, max = 60)
        Dimension sectionDepthMm,

        @Field(value = "width of the middle body around the kingpin", min = 10, max = 200)
        Dimension bodyWidthMm,

        @Field(value = "how far the middle body reaches fore and aft of the axle line", min = 5, max = 120)
        Dimension bodyReachMm,

        String material)
        implements Part {
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
