/// What a workshop keeps, as documents, and the one text that files and store write them in.
///
/// Lives here: parts, kits, measurements, routes and logs as YAML, every mistake with its line, what can be changed in
/// them, what they must agree on. May not: files, databases.
@NullMarked
package beltwright.workshop.document;

import org.jspecify.annotations.NullMarked;
