package leadlamp.words;

import java.util.List;

/**
 * A word of which places are made.
 *
 * @param axis what it tells: SIDE, BANK, END, HALF, RING, HEIGHT, DIRECTION, CORNER, QUARTER or SPOT
 * @param also other words taken for it
 */
public record PlaceWord(String name, String axis, String gloss, List<String> also) {
}
