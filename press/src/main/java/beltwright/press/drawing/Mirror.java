package beltwright.press.drawing;

/// An entity as it stands after a placing, its letters left readable.
final class Mirror {
    private Mirror() {}

    static Entity of(Entity entity, Placing placing) {
        return switch (entity) {
            case Entity.Line l -> new Entity.Line(placing.of(l.from()), placing.of(l.to()), l.line(), l.tag());
            case Entity.Arc a -> new Entity.Arc((Segment.Bow) a.bow().mapped(placing), a.line(), a.tag());
            case Entity.Circle c ->
                new Entity.Circle(
                        placing.of(c.centre()), c.radius() * placing.scale(), c.line(), c.fill(), c.turned(), c.tag());
            case Entity.Path p ->
                new Entity.Path(
                        p.contours().stream().map(c -> c.mapped(placing)).toList(),
                        p.line(),
                        p.fill(),
                        p.turned(),
                        p.tag());
            case Entity.Text t ->
                new Entity.Text(
                        placing.of(t.at()), t.words(), t.sizeMm(), t.anchor(), t.angleDeg(), t.strong(), t.tag());
            case Entity.Dimension d -> throw new IllegalStateException("dimensions are placed after mirroring");
        };
    }
}
