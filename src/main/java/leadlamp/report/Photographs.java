package leadlamp.report;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import leadlamp.record.Build;
import leadlamp.record.Place;
import leadlamp.record.Statement;
import leadlamp.report.ReportModel.Evidence;
import leadlamp.report.ReportModel.Photo;

/**
 * Takes the photographs that a record names into its report: scaled down and drawn anew, so that nothing of what a camera
 * hides in its files (where and when, with what) comes along. None is taken from outside the record's own folder.
 */
public final class Photographs {
    private static final int LONGEST_SIDE = 900;
    private static final float QUALITY = 0.8f;
    private static final long MOST_BYTES = 40L << 20;
    /** More dots than this no camera of a workshop makes; the file would fill the memory. */
    private static final long MOST_DOTS = 150_000_000;
    private static final String PHOTO = "photo";

    private final Build build;
    private final Path folder;

    private Photographs(Build build, Path folder) {
        this.build = build;
        this.folder = folder;
    }

    /** A photograph that cannot be shown, with the reason as one sentence. */
    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String reason) {
            super(reason, null, false, false);
        }
    }

    private record Small(byte[] jpeg, int width, int height) {
    }

    /**
     * All photographs of a record, in its own order.
     *
     * @param record where the record lies
     */
    public static List<Photo> of(Build build, Path record) {
        System.setProperty("java.awt.headless", "true");
        ImageIO.setUseCache(false);
        Path folder = record.toAbsolutePath().normalize().getParent();
        List<Photo> photos = new ArrayList<>();
        for (Build.Photo photo : build.photos()) {
            photos.add(new Photographs(build, folder).photo("photo-" + (photos.size() + 1), photo));
        }
        return List.copyOf(photos);
    }

    private Photo photo(String anchor, Build.Photo photo) {
        String of = photo.of().orElse("") + photo.at().map(at -> " at " + at).orElse("") + photo.date().map(date -> ", " + date).orElse("");
        String caption = photo.name() + (of.isEmpty() ? "" : ": " + of);
        try {
            Small small = small(photo.file());
            return new Photo(anchor, caption, "Photograph " + caption, "data:image/jpeg;base64,"
                    + Base64.getEncoder().encodeToString(small.jpeg()), small.width(), small.height(), "", lines(photo));
        } catch (Refused refused) {
            return new Photo(anchor, caption, "", "", 0, 0, refused.getMessage(), lines(photo));
        }
    }

    // --- what it belongs to

    /** The entries that name it; where none does, the first that speaks of what it shows. */
    private List<Evidence> lines(Build.Photo photo) {
        List<Evidence> lines = new ArrayList<>();
        for (Statement line : build.statements()) {
            boolean names = (line.what().equals(PHOTO) || line.what().endsWith(" " + PHOTO)) && line.says().equals(photo.name());
            if (names && lines.stream().noneMatch(known -> known.where().line() == line.where().line())) {
                lines.add(new Evidence(line.where(), Lines.cut(line.text(), line.where().column())));
            }
        }
        if (lines.isEmpty()) {
            for (Statement line : build.statements()) {
                boolean shows = photo.of().filter(of -> of.equals(line.of())).isPresent()
                        && photo.at().map(at -> Place.related(at, line.at())).orElse(true);
                if (shows) {
                    return List.of(new Evidence(line.where(), Lines.cut(line.text(), line.where().column())));
                }
            }
        }
        return List.copyOf(lines);
    }

    // --- the file

    private Small small(String name) throws Refused {
        Path file = inside(name);
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new Refused("The photograph " + name + " is over 40 MB and is not shown. Make it smaller.");
            }
            byte[] bytes = Files.readAllBytes(file);
            BufferedImage picture = read(bytes, name);
            return jpeg(scaled(picture, turned(bytes)));
        } catch (IOException | RuntimeException | OutOfMemoryError broken) {
            throw new Refused("The photograph " + name + " is there and cannot be read as a picture. JPEG, PNG, GIF and BMP are read.");
        }
    }

    /** The file itself, links followed, never outside the folder of the record. */
    private Path inside(String name) throws Refused {
        Refused outside = new Refused("The photograph " + name + " lies outside the record's own folder and is not shown.");
        try {
            Path file = folder.resolve(name).normalize();
            if (!file.startsWith(folder)) {
                throw outside;
            }
            if (!Files.isRegularFile(file)) {
                throw new Refused("There is no photograph " + name + " beside the record.");
            }
            if (!file.toRealPath().startsWith(folder.toRealPath())) {
                throw outside;
            }
            return file;
        } catch (InvalidPathException | IOException odd) {
            throw new Refused("There is no photograph " + name + " beside the record.");
        }
    }

    private static BufferedImage read(byte[] bytes, String name) throws IOException, Refused {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("no picture");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                if ((long) width * height > MOST_DOTS) {
                    throw new Refused("The photograph " + name + " has too many dots and is not shown. Make it smaller.");
                }
                int step = Math.max(1, Math.max(width, height) / (2 * LONGEST_SIDE));
                ImageReadParam sparingly = reader.getDefaultReadParam();
                sparingly.setSourceSubsampling(step, step, 0, 0);
                return reader.read(0, sparingly);
            } finally {
                reader.dispose();
            }
        }
    }

    private static BufferedImage scaled(BufferedImage picture, int turned) {
        double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(picture.getWidth(), picture.getHeight()));
        boolean lies = turned >= 5;
        int width = Math.max(1, (int) Math.round((lies ? picture.getHeight() : picture.getWidth()) * scale));
        int height = Math.max(1, (int) Math.round((lies ? picture.getWidth() : picture.getHeight()) * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D draw = small.createGraphics();
        draw.setColor(java.awt.Color.WHITE);
        draw.fillRect(0, 0, width, height);
        draw.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform way = upright(turned, width, height);
        way.scale(scale, scale);
        draw.drawImage(picture, way, null);
        draw.dispose();
        return small;
    }

    /** How a camera that was held turned has its picture set upright (the eight ways of the Exif standard, tag 0112). */
    private static AffineTransform upright(int turned, int width, int height) {
        return switch (turned) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, width, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, width, height);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, height);
            default -> new AffineTransform();
        };
    }

    private static Small jpeg(BufferedImage picture) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(picture, null, null), how);
        } finally {
            writer.dispose();
        }
        return new Small(bytes.toByteArray(), picture.getWidth(), picture.getHeight());
    }

    // --- how the camera was held

    /** The turn that a JPEG file tells, 1 to 8; 1, upright, where it tells none. */
    static int turned(byte[] file) {
        int at = 2;
        while (at + 4 <= file.length && (file[at] & 0xFF) == 0xFF && file.length > 2 && (file[0] & 0xFF) == 0xFF && (file[1] & 0xFF) == 0xD8) {
            int length = (file[at + 2] & 0xFF) << 8 | file[at + 3] & 0xFF;
            if ((file[at + 1] & 0xFF) == 0xE1 && at + 10 < file.length && file[at + 4] == 'E' && file[at + 5] == 'x') {
                return told(file, at + 10, Math.min(file.length, at + 2 + length)).orElse(1);
            }
            if ((file[at + 1] & 0xFF) == 0xDA || length < 2) {
                return 1;
            }
            at += 2 + length;
        }
        return 1;
    }

    /** Tag 0112 of the first directory; whatever is odd is passed over. */
    private static Optional<Integer> told(byte[] file, int start, int end) {
        if (start + 8 > end) {
            return Optional.empty();
        }
        boolean little = file[start] == 'I';
        int directory = start + number(file, start + 4, 4, little, end);
        int entries = number(file, directory, 2, little, end);
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + 12 * i;
            if (entry < start || entry + 12 > end) {
                return Optional.empty();
            }
            if (number(file, entry, 2, little, end) == 0x0112) {
                int turn = number(file, entry + 8, 2, little, end);
                return turn >= 1 && turn <= 8 ? Optional.of(turn) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static int number(byte[] file, int at, int bytes, boolean little, int end) {
        if (at < 0 || at + bytes > end) {
            return 0;
        }
        int number = 0;
        for (int i = 0; i < bytes; i++) {
            number = number << 8 | file[at + (little ? bytes - 1 - i : i)] & 0xFF;
        }
        return number;
    }
}
