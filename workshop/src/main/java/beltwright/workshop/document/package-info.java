/// What a workshop keeps, as documents, and the one text that files and store write them in.
///
/// Lives here: parts, kits and measurements as YAML, every mistake of a file with its line. May not: files, databases,
/// or what documents must agree on with each other.
@NullMarked
package beltwright.workshop.document;

import org.jspecify.annotations.NullMarked;
