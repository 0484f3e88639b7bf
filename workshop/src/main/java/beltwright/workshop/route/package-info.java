/// Routes from recorded tracks and from tables.
///
/// Lives here: what the columns mean, gaps and jumps, merging and thinning of points. May not: how a route is kept (the
/// package `document` says that), any formula.
@NullMarked
package beltwright.workshop.route;

import org.jspecify.annotations.NullMarked;
