package leadlamp.audit;

import java.util.List;

/**
 * A sign of the past: what a part says of the life before.
 *
 * @param id       its name
 * @param sign     what it is, in a few words
 * @param looks    what it looks like
 * @param shownBy  what shows it, in words of the record; any one of them
 * @param family   signs of one family have one cause and count once; its own name where it stands alone
 * @param setAside why it is innocent, one for each thing that makes it so
 * @param basis    what this rests on
 */
public record PastSign(String id, String sign, String looks, List<String> shownBy, String family, List<String> setAside,
        String basis) {
}
