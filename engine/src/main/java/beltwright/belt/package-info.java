/// The belt on its pulleys: pitch-line geometry, mesh, tension, span frequency, rating.
///
/// May not live here: where a pulley sits on a board.
@NullMarked
package beltwright.belt;

import org.jspecify.annotations.NullMarked;
