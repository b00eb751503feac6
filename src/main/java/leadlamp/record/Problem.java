package leadlamp.record;

import java.util.Optional;

/**
 * Something in a file that could not be taken as it stands, as data; a writer turns it into text.
 *
 * @param where    where it stands
 * @param length   how many characters are meant; 0 where the whole line is
 * @param line     the text of the line, as written; empty where there is none
 * @param what     what is wrong, one sentence
 * @param expected what was expected, one sentence; may be empty
 * @param nearest  the nearest right word, if one is near
 * @param rest     what became of the rest, one sentence; may be empty
 */
public record Problem(Where where, int length, String line, String what, String expected, Optional<String> nearest,
        String rest) {
}
