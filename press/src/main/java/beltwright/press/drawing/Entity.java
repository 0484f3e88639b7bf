package beltwright.press.drawing;

import java.util.List;

/// One thing on a drawing, in mm of the real thing; sizes of letters are in mm on the sheet.
public sealed interface Entity {
    Tag tag();

    /// {@return what it covers (real mm), letters and dimension lines left out}
    Bounds bounds();

    Entity tagged(Tag tag);

    boolean finite();

    /// A straight line.
    record Line(Point from, Point to, LineClass line, Tag tag) implements Entity {
        @Override
        public Bounds bounds() {
            return Bounds.of(from, to);
        }

        @Override
        public Entity tagged(Tag other) {
            return new Line(from, to, line, other);
        }

        @Override
        public boolean finite() {
            return from.finite() && to.finite();
        }
    }

    /// An arc, counter-clockwise where the sweep is positive (rad).
    record Arc(Segment.Bow bow, LineClass line, Tag tag) implements Entity {
        @Override
        public Bounds bounds() {
            return bow.bounds();
        }

        @Override
        public Entity tagged(Tag other) {
            return new Arc(bow, line, other);
        }

        @Override
        public boolean finite() {
            return bow.from().finite() && bow.to().finite();
        }
    }

    /// A whole circle.
    record Circle(Point centre, double radius, LineClass line, Fill fill, boolean turned, Tag tag) implements Entity {
        @Override
        public Bounds bounds() {
            return Bounds.of(centre).grown(radius);
        }

        @Override
        public Entity tagged(Tag other) {
            return new Circle(centre, radius, line, fill, turned, other);
        }

        @Override
        public boolean finite() {
            return centre.finite() && radius > 0 && Double.isFinite(radius);
        }
    }

    /// Closed outlines; where one lies inside another it is a hole.
    ///
    /// @param turned whether the hatch leans the other way, so that touching parts can be told apart
    record Path(List<Contour> contours, LineClass line, Fill fill, boolean turned, Tag tag) implements Entity {
        public Path {
            contours = List.copyOf(contours);
        }

        @Override
        public Bounds bounds() {
            return contours.stream().map(Contour::bounds).reduce(Bounds.EMPTY, Bounds::with);
        }

        @Override
        public Entity tagged(Tag other) {
            return new Path(contours, line, fill, turned, other);
        }

        @Override
        public boolean finite() {
            return contours.stream().allMatch(Contour::finite);
        }
    }

    /// Words at a point.
    ///
    /// @param sizeMm size of the type on the sheet (mm)
    /// @param angleDeg slope of the base line
    record Text(Point at, String words, double sizeMm, Anchor anchor, double angleDeg, boolean strong, Tag tag)
            implements Entity {
        /// Which point of the base line stands at the given point.
        public enum Anchor {
            START,
            MIDDLE,
            END
        }

        @Override
        public Bounds bounds() {
            return Bounds.of(at);
        }

        @Override
        public Entity tagged(Tag other) {
            return new Text(at, words, sizeMm, anchor, angleDeg, strong, other);
        }

        @Override
        public boolean finite() {
            return at.finite();
        }

        /// {@return what the letters cover on the sheet (mm)}
        public TextBox box(Placing placing) {
            return TextBox.of(placing.of(at), words, sizeMm, anchor, angleDeg, strong);
        }
    }

    /// A distance between two witness points, shown along a dimension line.
    ///
    /// @param lineFrom where the witness line of `from` meets the dimension line
    /// @param outside whether the arrows stand outside, pointing in
    /// @param tail length of the line under a text that stands outside (mm on the sheet): past `to` where positive,
    ///     past `from` where negative
    record Dimension(
            Point from,
            Point to,
            Point lineFrom,
            Point lineTo,
            boolean outside,
            double tail,
            Text text,
            String name,
            Tag tag)
            implements Entity {
        /// {@return the distance that its text states (mm)}
        public double valueMm() {
            var along = lineTo.minus(lineFrom).unit();
            return Math.abs(to.minus(from).dot(along));
        }

        @Override
        public Bounds bounds() {
            return Bounds.of(from, to);
        }

        @Override
        public Entity tagged(Tag other) {
            return new Dimension(from, to, lineFrom, lineTo, outside, tail, (Text) text.tagged(other), name, other);
        }

        @Override
        public boolean finite() {
            return from.finite() && to.finite() && lineFrom.finite() && lineTo.finite();
        }
    }
}
