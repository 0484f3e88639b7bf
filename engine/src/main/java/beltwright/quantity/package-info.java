/// What a number is here: a nominal with limits, where it was read, and what happens when it is not known.
///
/// Lives here: dimensions, their text, limits and fits, the one refusal. May not: anything that knows a part.
@NullMarked
package beltwright.quantity;

import org.jspecify.annotations.NullMarked;
