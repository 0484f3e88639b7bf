package beltwright.part;

import java.util.EnumMap;
import java.util.Map;

/// A material as the checks need it. Values come from the workshop's reference file, each with its source.
///
/// @param hatch which section hatch the drawing uses
/// @param values what is known of it
public record Material(String id, String name, Hatch hatch, Map<Property, Value> values) {
    private static final Value UNKNOWN = new Value(Double.NaN, "not in the reference file");

    public Material {
        var copy = new EnumMap<Property, Value>(Property.class);
        copy.putAll(values);
        values = Map.copyOf(copy);
    }

    /// What can be known of a material.
    public enum Property {
        SHEAR("shearMpa", "shear strength", "MPa"),
        YIELD("yieldMpa", "yield strength, 0.2 % proof strength", "MPa"),
        TENSILE("tensileMpa", "tensile strength", "MPa"),
        YOUNG("youngMpa", "modulus of elasticity", "MPa"),
        FATIGUE("fatigueMpa", "stress amplitude that a polished bar stands for ten million turns", "MPa"),
        HEAD("headMpa", "pressure that it stands under the head of a screw", "MPa"),
        POISSON("poisson", "Poisson's ratio", "", 0, 0.5),
        EXPANSION("expansionPpmPerK", "thermal expansion, millionths for each kelvin", "1/MK", 1, 400),
        HALF_AT("halfAtC", "temperature at which half of its strength is left", "°C");

        private final String field;
        private final String words;
        private final String unit;
        private final double least;
        private final double most;

        Property(String field, String words, String unit) {
            this(field, words, unit, 1, 400_000);
        }

        Property(String field, String words, String unit, double least, double most) {
            this.field = field;
            this.words = words;
            this.unit = unit;
            this.least = least;
            this.most = most;
        }

        /// {@return its name in the reference file, unit included}
        public String field() {
            return field;
        }

        public String unit() {
            return unit;
        }

        /// {@return the least that a real material has}
        public double least() {
            return least;
        }

        /// {@return the most that a real material has}
        public double most() {
            return most;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// A number with where it was read; NaN where nobody knows it.
    public record Value(double number, String source) {}

    /// {@return what is known of this property; NaN where nothing is}
    public Value of(Property property) {
        return values.getOrDefault(property, UNKNOWN);
    }

    /// {@return shear strength (MPa), NaN where unknown}
    public double shearMpa() {
        return of(Property.SHEAR).number();
    }

    /// Section hatches by family of material (ISO 128-50 habits).
    public enum Hatch {
        STEEL,
        LIGHT_METAL,
        PLASTIC,
        RUBBER
    }
}
