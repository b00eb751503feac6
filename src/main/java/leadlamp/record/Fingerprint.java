package leadlamp.record;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * SHA-256 of a file's bytes. It is worked out when somebody asks for it: most reports never do, and to load what works it out
 * is a fair part of a start.
 */
public final class Fingerprint {
    /** Of what is no file. */
    public static final Fingerprint NONE = new Fingerprint(new byte[0], "");

    private final byte[] bytes;
    private String hex;

    private Fingerprint(byte[] bytes, String hex) {
        this.bytes = bytes;
        this.hex = hex;
    }

    /** Of these bytes, which must not change. */
    public static Fingerprint of(byte[] bytes) {
        return new Fingerprint(bytes, null);
    }

    /** Hexadecimal; empty where there was no file. */
    public synchronized String hex() {
        if (hex == null) {
            try {
                byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
                StringBuilder text = new StringBuilder(2 * hash.length);
                for (byte b : hash) {
                    text.append(Character.forDigit(b >> 4 & 15, 16)).append(Character.forDigit(b & 15, 16));
                }
                hex = text.toString();
            } catch (NoSuchAlgorithmException never) {
                throw new IllegalStateException("every Java has SHA-256", never);
            }
        }
        return hex;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fingerprint print && hex().equals(print.hex());
    }

    @Override
    public int hashCode() {
        return hex().hashCode();
    }

    @Override
    public String toString() {
        return hex();
    }
}
