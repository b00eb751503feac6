package leadlamp.cli;

/** Something that a command cannot do, as one sentence to whoever typed it. */
final class Complaint extends Exception {
    private static final long serialVersionUID = 1;

    Complaint(String sentence) {
        super(sentence, null, false, false);
    }
}
