/** Lessons, the handbook, the plan of looks at a second-hand engine, and exercises: all made from the same rules as an audit. */
package leadlamp.teach;
