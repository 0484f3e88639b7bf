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
}
