package leadlamp.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import leadlamp.report.ReportModel.Photo;
import leadlamp.report.draw.Picture;

/**
 * Puts a page together that needs nothing beside it: no network, no script. Whatever comes from a record goes through
 * {@link #text}.
 */
public final class Page {
    private final StringBuilder out = new StringBuilder(32_768);

    /** Begins a page: its name in the window, what kind of page it is, its heading. The header stays open. */
    public Page begin(String window, String kind, String heading) {
        return begin(window, kind, heading, "");
    }

    /** The same for a page with a script of its own at its end, and with no other: the script's hash is in its policy. */
    public Page begin(String window, String kind, String heading, String script) {
        return raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                + "style-src 'unsafe-inline'; img-src data:" + allowed(script) + "\">\n<title>").text(window)
                .raw("</title>\n<style>\n").raw(css()).raw("</style>\n</head>\n<body>\n"
                        + "<a class=\"skip\" href=\"#main\">To the content</a>\n<header>\n<p class=\"kicker\">")
                .text(kind).raw("</p>\n<h1>").text(heading).raw("</h1>\n");
    }

    private static String allowed(String script) {
        if (script.isEmpty()) {
            return "";
        }
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
            return "; script-src 'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** Ends it, with the record and the bytes that it was made from. */
    public Page end(String file, String bytes) {
        return raw("</main>\n<footer class=\"end\">\n").element("<p>", "Made from " + file
                + (bytes.isEmpty() ? "" : ", SHA-256 " + bytes), "</p>").raw("</footer>\n</body>\n</html>\n");
    }

    /** A drawing with its name above it. */
    public Page picture(Picture picture) {
        return raw("<p class=\"soft\">").text(picture.title()).raw("</p>\n").raw(Plain.of(picture.svg())).raw("\n");
    }

    /** A photograph with what it shows; where it cannot be shown, the reason. */
    public Page photo(Photo photo) {
        if (photo.data().isEmpty()) {
            return element("<p class=\"missing\" id=\"" + photo.anchor() + "\">", photo.problem(), "</p>");
        }
        return raw("<figure id=\"" + photo.anchor() + "\"><img src=\"" + photo.data() + "\" width=\"" + photo.width() + "\" height=\""
                + photo.height() + "\" alt=\"").text(photo.alt()).raw("\"><figcaption>").text(photo.caption()).raw("</figcaption></figure>\n");
    }

    private static String css() {
        try (InputStream in = Page.class.getResourceAsStream("page.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Markup of our own, as it is. */
    public Page raw(String markup) {
        out.append(markup);
        return this;
    }

    /** Text, which stays text. */
    public Page text(String text) {
        String plain = Plain.of(text);
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
        return this;
    }

    /** An element that holds text alone; nothing where there is no text. */
    public Page element(String open, String text, String close) {
        return text.isEmpty() ? this : raw(open).text(text).raw(close).raw("\n");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
