/**
 * Asks, the rulebase, findings and answers.
 *
 * <p><b>A page</b> ({@code rules/TOPIC/CHECK.yaml}) has the keys {@code question, asked-of, applies, ways, severity, likelihood, shifts,
 * chain, do, also-check, settle-with, person, caution, teaches, basis, also-covers, last-chance, cases}; a way has {@code needs, heeds,
 * found, applies, severity, likelihood}. Words of {@code needs}, {@code heeds} and {@code applies} are names of facts:
 * <ul>
 * <li>{@code cam gear pin form}, {@code piston skirt scuffed}, {@code joint torque}, {@code piston clearance}, {@code use duty},
 * {@code steps valve leak tested}, {@code sheet joint lubricant}, {@code condition wet liners}; a kind may stand for its members:
 * {@code bolt finish}, {@code plain bearing clearance}. A need on a condition is a need on all that settles it.
 * <li>Where the group runs over parts, readings or entries (each kept part, each reading, each observation, each step ...) the Ask's
 * {@code of} says which one, and {@code any part ORIGIN}, {@code any reading}, {@code any reading state}, {@code any sign},
 * {@code any step}, {@code any machining}, {@code any protection} stand for the word of that one. The rule says
 * {@code of == $part} there, and quotes no part.
 * <li>A place that the rule quotes ({@code at == "across"}) is where the need is wanted; else it is wanted at the places of its own
 * group that are related to the place asked.
 * </ul>
 *
 * <p>{@code applies} takes a list of words that may be said; {@code recorded} stands for anything said, {@code seen} for a sign that
 * was seen, {@code done} and {@code next} for a step that the record names or that {@code stage} and {@code next} put behind or at hand.
 *
 * <p><b>A page of a condition</b> ({@code rules/conditions/NAME.yaml}) has {@code reads, settled by, why, cases}. It is known not to
 * hold once every word under {@code settled by} is known; where that is not said, every word that it reads.
 *
 * <p><b>A case</b> has {@code name, build, change, sheet, erase, expect, also}. A place under {@code expect} is the place asked; where
 * the group runs over parts it is {@code PART at PLACE}, or {@code PART} alone for what the engine has once. {@code cannot tell (A, B)}
 * names all reasons there are. {@code erase} takes words of the record ({@code cam gear pin form at intake}), of the sheet
 * ({@code sheet joint lubricant at oil pump to block}) and limits of the sheet ({@code limit piston clearance}); with {@code gauge} after
 * a reading ({@code joint torque gauge at oil pump to block}) the reading stays and its gauge goes. A changed reading keeps its gauge
 * where the change names none.
 */
package leadlamp.audit;
