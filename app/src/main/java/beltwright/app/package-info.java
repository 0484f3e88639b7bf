/// The command line: one class a command, each a thin hand between what was typed and the rooms that do the work.
///
/// May not live here: a formula, a page, a file format.
@NullMarked
package beltwright.app;

import org.jspecify.annotations.NullMarked;
