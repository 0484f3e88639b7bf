/// The order of assembly, steps, tools, the box and its bill of materials, and the proof that steps and box meet.
///
/// May not live here: prose of a printed page.
@NullMarked
package beltwright.assembly;

import org.jspecify.annotations.NullMarked;
