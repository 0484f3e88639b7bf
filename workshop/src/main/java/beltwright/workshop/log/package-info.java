/// Logs from tables that a recorder wrote.
///
/// Lives here: which column is read as what, in which unit, and what is doubtful in it. May not: how a log is kept (the
/// package `document` says that), any formula.
@NullMarked
package beltwright.workshop.log;

import org.jspecify.annotations.NullMarked;
