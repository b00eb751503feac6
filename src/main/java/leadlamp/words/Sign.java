package leadlamp.words;

import java.util.List;

/**
 * What an observation may say.
 *
 * @param parts    usual parts, a kind for all of its kind; `any` where the reader never asks
 * @param sound    whether it speaks for the part
 * @param rulesOut signs that it shows to be absent at its place; of one that is not sound, those that are absent where it is
 * @param amount   what `amount` takes, in words: `angle or length`, `none`, `light or heavy`
 * @param deep     whether it goes deeper than a cut
 */
public record Sign(String name, String gloss, List<String> parts, boolean sound, List<String> rulesOut, String amount, boolean deep) {
}
