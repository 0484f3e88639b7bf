/// The workshop: what is on the shelf, tried-out edits, the store, import and export.
///
/// Lives here: files and the database, and everything that touches them. May not: how a document is written, any
/// formula.
@NullMarked
package beltwright.workshop;

import org.jspecify.annotations.NullMarked;
