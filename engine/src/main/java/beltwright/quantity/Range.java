package beltwright.quantity;

/// A nominal between its lowest and highest limit, as it is carried through a chain of dimensions (worst case).
///
/// A dimension must enter a chain once only; adding it and taking it away again would count its limits twice.
public record Range(double low, double nominal, double high) {
    public static final Range ZERO = exact(0);

    public static Range exact(double value) {
        return new Range(value, value, value);
    }

    public static Range of(Dimension d) {
        return new Range(d.lower(), d.nominal(), d.upper());
    }

    public Range plus(Range o) {
        return new Range(low + o.low, nominal + o.nominal, high + o.high);
    }

    public Range plus(Dimension d) {
        return new Range(low + d.lower(), nominal + d.nominal(), high + d.upper());
    }

    public Range plus(double by) {
        return new Range(low + by, nominal + by, high + by);
    }

    public Range minus(Range o) {
        return new Range(low - o.high, nominal - o.nominal, high - o.low);
    }

    public Range minus(Dimension d) {
        return new Range(low - d.upper(), nominal - d.nominal(), high - d.lower());
    }

    /// @param factor not negative
    public Range times(double factor) {
        return new Range(low * factor, nominal * factor, high * factor);
    }

    public Range negated() {
        return new Range(-high, -nominal, -low);
    }

    /// {@return the range of the size without its sign}
    public Range absolute() {
        double least = low <= 0 && high >= 0 ? 0 : Math.min(Math.abs(low), Math.abs(high));
        return new Range(least, Math.abs(nominal), Math.max(Math.abs(low), Math.abs(high)));
    }

    public boolean known() {
        return !Double.isNaN(nominal);
    }
}
