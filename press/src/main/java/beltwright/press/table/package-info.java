/// Tables of power and rides with their cells in words: terminal and pages set the same ones.
///
/// May import the engine; knows nothing of columns, letters or pages.
@NullMarked
package beltwright.press.table;

import org.jspecify.annotations.NullMarked;
