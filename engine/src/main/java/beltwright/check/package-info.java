/// Every question asked of a kit, its answer with the working, and the margin ladder.
///
/// May not live here: geometry of its own; it calls belt, layout, strength and power.
@NullMarked
package beltwright.check;

import org.jspecify.annotations.NullMarked;
