/// How fast, timed beside a yardstick in the same run. May not: a test of what is right.
package beltwright.benchmark;
