package leadlamp.cli;

import static leadlamp.cli.Typed.command;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photographs that a record names, in its page. */
class PhotographsTest {
    private static final String SECRET = "N54.4520 W3.2120";

    @TempDir
    private Path folder;
    private Path record;

    @BeforeEach
    void a_record_of_one_photograph() throws IOException {
        Files.createDirectories(folder.resolve("bench/photos"));
        Files.copy(Path.of("sample-builds/engines/tarn-12.yaml"), folder.resolve("bench/engine.yaml"));
        record = folder.resolve("bench/record.yaml");
        names("photos/pin.jpg");
    }

    private void names(String file) throws IOException {
        Files.writeString(record, "engine: engine.yaml\nobservations:\n  - { trigger disc: play, photo: disc }\nphotos:\n  disc: { file: \""
                + file + "\", of: trigger disc }\n");
    }

    @Test
    void it_stands_beside_its_entry_scaled_down_and_without_where_it_was_taken() throws IOException {
        Files.write(folder.resolve("bench/photos/pin.jpg"), withHiddenData(picture(2400, 1200), 1));
        String page = page();

        assertThat(page).containsSubsequence("id=\"found-1\"", "- { trigger disc: play, photo: disc }", "<img src=\"data:image/jpeg;base64,",
                "alt=\"Photograph disc: trigger disc\"");
        byte[] shown = shown(page);
        assertThat(new String(shown, StandardCharsets.ISO_8859_1)).doesNotContain(SECRET, "Exif");
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(shown));
        assertThat(small.getWidth()).isEqualTo(900);
        assertThat(small.getHeight()).isEqualTo(450);
        assertThat(page.split("data:image")).as("shown once").hasSize(2);
    }

    @Test
    void a_picture_taken_with_the_camera_turned_is_set_upright() throws IOException {
        // Red on the left; held a quarter turned (6), red goes to the top.
        Files.write(folder.resolve("bench/photos/pin.jpg"), withHiddenData(picture(400, 200), 6));
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(shown(page())));

        assertThat(small.getWidth()).isEqualTo(200);
        assertThat(small.getHeight()).isEqualTo(400);
        assertThat(new Color(small.getRGB(100, 40)).getRed()).isGreaterThan(180);
        assertThat(new Color(small.getRGB(100, 360)).getRed()).isLessThan(80);
    }

    @Test
    void one_that_is_missing_or_no_picture_is_said_so_in_the_page_and_aloud() throws IOException {
        Typed missing = command("audit", record.toString(), "--as", "html");
        assertThat(missing.err()).contains("There is no photograph photos/pin.jpg beside the record.");
        assertThat(missing.out()).contains("There is no photograph photos/pin.jpg beside the record.");

        Files.writeString(folder.resolve("bench/photos/pin.jpg"), "no picture");
        assertThat(page()).contains("cannot be read as a picture");
    }

    @Test
    void none_is_taken_from_outside_the_folder_of_the_record() throws IOException {
        Files.write(folder.resolve("outside.jpg"), jpeg(picture(40, 20)));
        for (String path : new String[] {"../outside.jpg", "photos/../../outside.jpg", folder.resolve("outside.jpg").toString()}) {
            names(path);
            assertThat(page()).as(path).contains("lies outside the record").doesNotContain("data:image");
        }
        Files.createSymbolicLink(folder.resolve("bench/photos/link.jpg"), folder.resolve("outside.jpg"));
        names("photos/link.jpg");
        assertThat(page()).contains("lies outside the record").doesNotContain("data:image");
    }

    @Test
    void a_sheet_outside_the_folder_of_the_record_is_not_read() throws IOException {
        Files.writeString(folder.resolve("secret.yaml"), "password: [open");
        Files.writeString(record, "engine: ../secret.yaml\n");
        Typed audit = command("audit", record.toString());

        assertThat(audit.status()).isEqualTo(2);
        assertThat(audit.out()).contains("leads out of the record's folder").doesNotContain("password");
    }

    @Test
    void the_other_forms_look_at_no_photograph() {
        assertThat(command("audit", record.toString()).err()).isEmpty();
        assertThat(command("audit", record.toString(), "--as", "json").err()).isEmpty();
    }

    private String page() {
        return command("audit", record.toString(), "--as", "html").out();
    }

    private static byte[] shown(String page) {
        Matcher data = Pattern.compile("data:image/jpeg;base64,([^\"]+)\"").matcher(page);
        assertThat(data.find()).isTrue();
        return Base64.getDecoder().decode(data.group(1));
    }

    /** Left half red, right half blue. */
    private static BufferedImage picture(int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                picture.setRGB(x, y, x < width / 2 ? 0xDD1111 : 0x1111DD);
            }
        }
        return picture;
    }

    private static byte[] jpeg(BufferedImage picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "jpeg", bytes);
        return bytes.toByteArray();
    }

    /** As a camera writes it: turn and place hidden behind the first two bytes. */
    private static byte[] withHiddenData(BufferedImage picture, int turn) throws IOException {
        byte[] plain = jpeg(picture);
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        told.write("Exif\0\0MM\0*\0\0\0\10\0\1\1\22\0\3\0\0\0\1\0".getBytes(StandardCharsets.ISO_8859_1));
        told.write(turn);
        told.write(new byte[] {0, 0, 0, 0, 0, 0});
        told.write(SECRET.getBytes(StandardCharsets.ISO_8859_1));
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.write(plain, 0, 2);
        all.write(0xFF);
        all.write(0xE1);
        all.write(told.size() + 2 >> 8);
        all.write(told.size() + 2 & 0xFF);
        all.write(told.toByteArray());
        all.write(plain, 2, plain.length - 2);
        return all.toByteArray();
    }
}
