/// A kit: the seats, the parts that fill them, how they are joined, and what the kit is asked to do.
///
/// Lives here: the kit as typed, the kit resolved, and the resolution that may refuse. May not: positions in space.
@NullMarked
package beltwright.kit;

import org.jspecify.annotations.NullMarked;
