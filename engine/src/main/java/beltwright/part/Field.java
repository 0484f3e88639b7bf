package beltwright.part;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// What a field of a part means and which values can be true of a real one; forms, import and errors read it.
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Field {
    /// {@return what is measured, and from where to where}
    String value();

    /// {@return whether words may be left out: then the text is empty and a choice is its first}
    boolean optional() default false;

    double min() default 0;

    double max() default 1000;

    /// {@return another dimension of the same record that this one must be less than, empty for none}
    String within() default "";

    /// {@return when there is anything to measure: `shaftForm=D`, `flanges=both|wheel side`, `setScrews>0`; empty for
    ///     always}
    String when() default "";

    /// {@return what reads it: the questions of fit, or others that a kit can do without at first}
    Group group() default Group.FIT;

    /// What a field is for. Whoever begins sees those of fit; what must be said of every part is among them.
    enum Group {
        FIT("Fit", "what goes with what, and whether a kit goes together"),
        COVER("Cover", "whether a cover can be screwed on"),
        BOARD("Deck and ground", "what the deck clears as it leans, and the ground"),
        WIRES("Wires and plugs", "whether the wires reach, bend and plug in"),
        STRENGTH("Strength and tension", "what bears, slips or breaks, how long it lasts, how tight a belt is to be"),
        RIDE("Power and ride", "speed, hills, heat, range and brakes, and how hard the belts are pulled");

        private final String title;
        private final String says;

        Group(String title, String says) {
            this.title = title;
            this.says = says;
        }

        public String title() {
            return title;
        }

        /// {@return which questions read its fields}
        public String says() {
            return says;
        }
    }
}
