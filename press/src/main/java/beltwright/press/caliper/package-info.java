/// Where to put the caliper: a schematic of every kind of part, with a dimension for each field that has a place on it.
///
/// May not live here: a real part's size, or a view of a whole drive.
@NullMarked
package beltwright.press.caliper;

import org.jspecify.annotations.NullMarked;
