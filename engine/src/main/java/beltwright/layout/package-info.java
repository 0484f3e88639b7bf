/// The kit solved in space: positions, clearances, slot travel, the axle stack, and the distances a drawing shows.
///
/// May not live here: verdicts.
@NullMarked
package beltwright.layout;

import org.jspecify.annotations.NullMarked;
