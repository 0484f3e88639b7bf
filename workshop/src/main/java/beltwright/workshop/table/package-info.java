/// Tables of parts: a block pasted from a spreadsheet, or a CSV file, read into parts and written
/// from them.
///
/// Lives here: rows and cells, which column gives which field, what is wrong in which cell. May
/// not: how a field is read (the package `document` says that), files, databases.
@NullMarked
package beltwright.workshop.table;

import org.jspecify.annotations.NullMarked;
